import { expect, test } from 'vitest';
import { contentsOf } from '@/lib/offline/contents';
import { findInHand } from '@/lib/offline/find-in-hand';
import { motor } from '../matching/easy';
import { inSet, packMotor, packSet, plantOf } from './in-hand';

const pump = { description: 'lobe pump, 3 in', kind: 'rotary', maker: null };
const fault = (id: string, at: string) => ({ id, says: 'hums', at, by: 'Tam Oakes' });
const sets = [
  packSet('CP-108', { service: 'Acid supply 3', area: 'Clean-in-place' }),
  packSet('SL-205', {
    service: 'Basil oil dosing',
    pump,
    faults: [fault('b', '2026-11-28T03:10:00Z'), fault('a', '2026-11-27T22:00:00Z')],
  }),
  packSet('OR-101', { code: '4F7K2M9X' }),
];
const plant = plantOf(sets, [
  packMotor('M-1', { ...inSet('CP-108'), motor: motor({ id: 'M-1', frame: '132S' }) }),
  packMotor('M-2', inSet('SL-205')),
  packMotor('M-3'),
]);

test('a set in brief has the motor in it, its frame, and since when it is down by the newest fault', () => {
  const { sets: lines, motorCount } = contentsOf(plant);
  expect(motorCount).toBe(3);
  expect(lines.map(({ tag, motor, downSince }) => [tag, motor, downSince])).toEqual([
    ['CP-108', 'M-1', null],
    ['SL-205', 'M-2', '2026-11-28T03:10:00Z'],
    ['OR-101', null, null],
  ]);
  expect(lines[0]?.frame).toBe('132S');
  expect(lines[2]?.frame).toBeNull();
});

test.each(['CP-108', 'cp1o8', 'acid clean', 'lobe', '4F7K2M9X', 'SL-250', 'nothing'])(
  'by %j the same sets are found in brief and in whole, in the same order',
  (typed) => {
    const tags = (found: { tag: string }[]) => found.map(({ tag }) => tag);
    expect(tags(findInHand(contentsOf(plant).sets, typed))).toEqual(tags(findInHand(plant.sets.values(), typed)));
  },
);

test('it outlasts being written and read', () => {
  const contents = contentsOf(plant);
  expect(JSON.parse(JSON.stringify(contents))).toEqual(contents);
});
