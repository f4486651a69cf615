import { expect, test } from 'vitest';
import {
  candidateInHand,
  candidatesInHand,
  motorNumbered,
  setInHand,
  setTagged,
  takeIn,
} from '@/lib/offline/plant-in-hand';
import { inSet, packMotor, packSet, plantOf } from './in-hand';

const [critical, middling, idle, untold] = [
  packSet('P-1', { criticality: 1 }),
  packSet('P-2', { criticality: 2 }),
  packSet('P-3', { criticality: 4 }),
  packSet('P-4'),
];
const plant = plantOf(
  [critical, middling, idle, untold],
  [
    packMotor('M-9'),
    packMotor('M-3', { place: 'on-order', shelfId: null, store: null, shelf: null }),
    packMotor('M-1', inSet('P-1')),
    packMotor('M-2', inSet('P-2')),
    packMotor('M-4', inSet('P-3')),
    packMotor('M-5', inSet('P-4')),
    packMotor('M-6', { place: 'at-repair', shelfId: null, store: null, shelf: null }),
    packMotor('M-7', { place: 'scrapped', shelfId: null, store: null, shelf: null }),
  ],
);
const asked = (number: string) => {
  const motor = motorNumbered(plant, number);
  if (motor === null) throw new Error(number);
  return candidateInHand(plant, critical, motor);
};

test('those that wait come first by number, then those of less critical sets, the least critical first', () => {
  const told = candidatesInHand(plant, critical).map(({ motor, from }) => `${motor.id} ${from}`);
  expect(told).toEqual(['M-3 shelf', 'M-9 shelf', 'M-4 set', 'M-2 set']);
});

test('a set of which nobody said how critical it is asks no other to stop, and is asked by none', () => {
  expect(candidatesInHand(plant, untold).map(({ motor }) => motor.id)).toEqual(['M-3', 'M-9']);
  expect(candidatesInHand(plant, critical).map(({ motor }) => motor.id)).not.toContain('M-5');
});

test.each([
  ['M-9', null],
  ['M-4', null],
  ['M-1', 'in-this-set'],
  ['M-5', 'in-critical-set'],
  ['M-6', 'at-repair'],
  ['M-7', 'scrapped'],
])('%s is offered or says why not', (number, unoffered) => {
  expect(asked(number).unoffered).toBe(unoffered);
});

test('the motor in the set is the failed one', () => {
  expect(setInHand(plant, critical).failed?.id).toBe('M-1');
  expect(setInHand(plantOf([critical], []), critical).failed).toBeNull();
});

test('a tag is known in any case of letters, the very same letters first', () => {
  const two = plantOf([packSet('p-1'), packSet('P-1', { id: 'other' })], []);
  expect(setTagged(two, 'P-1')?.id).toBe('other');
  expect(setTagged(two, ' p-1 ')?.id).toBe('set p-1');
  expect(setTagged(plant, 'P-9')).toBeNull();
});

test('what changed takes the place of what was there, what is retired is forgotten', () => {
  const held = plantOf([packSet('P-1'), packSet('P-2')], []);
  takeIn(held, { sets: [packSet('P-1', { service: 'Whey' }), packSet('P-2', { retired: true })], motors: [] });
  expect([...held.sets.values()].map(({ tag, service }) => [tag, service])).toEqual([['P-1', 'Whey']]);
});
