import { expect, test } from 'vitest';
import { serial } from '@/lib/plausibility/site/serial';
import type { SiteMotor } from '@/lib/plausibility/site-motor';

const motor = (number: string, maker: string | null, told: string | null, place = 'on shelf A1'): SiteMotor => ({
  id: `id of ${number}`,
  number,
  maker,
  serial: told,
  place,
});

const found = (...all: SiteMotor[]) => serial(all).map(({ id }) => id);

test('two motors with one serial number of one maker are both in doubt', () => {
  const twice = [
    motor('M-1', 'Quillmoor', 'QU 123-456', 'in SK-104'),
    motor('M-2', 'QUILLMOOR', 'qu123456'),
    motor('M-3', 'Quillmoor', 'QU123457'),
  ];
  expect(found(...twice)).toEqual(['id of M-1', 'id of M-2']);
  expect(serial(twice)[0]?.doubt).toMatchObject({
    grade: 'wrong',
    field: 'serial',
    says: 'Quillmoor QU 123-456 stands on M-1 in SK-104 and on M-2 on shelf A1: one of them is another, or it is one motor kept twice.',
  });
});

test.each([
  ['another maker', motor('M-1', 'Quillmoor', '123456'), motor('M-2', 'Haldengrave', '123456')],
  ['no maker', motor('M-1', null, '123456'), motor('M-2', null, '123456')],
  ['no serial number', motor('M-1', 'Quillmoor', null), motor('M-2', 'Quillmoor', null)],
  ['a word for none', motor('M-1', 'Quillmoor', 'N/A'), motor('M-2', 'Quillmoor', 'n/a')],
  ['no figure in it', motor('M-1', 'Quillmoor', 'unknown'), motor('M-2', 'Quillmoor', 'unknown')],
  ['noughts', motor('M-1', 'Quillmoor', '00000'), motor('M-2', 'Quillmoor', '00000')],
  ['a date code too short to be one', motor('M-1', 'Quillmoor', '123'), motor('M-2', 'Quillmoor', '123')],
])('is silent with %s', (_, a, b) => {
  expect(found(a, b)).toEqual([]);
});

test('four figures are a serial number', () => {
  expect(found(motor('M-1', 'Quillmoor', '1234'), motor('M-2', 'Quillmoor', '1234'))).toHaveLength(2);
});

test('another motor in the group is another doubt', () => {
  const [a, b, c] = ['M-1', 'M-2', 'M-3'].map((number) => motor(number, 'Quillmoor', '1234')) as [
    SiteMotor,
    SiteMotor,
    SiteMotor,
  ];
  expect(serial([a, b])[0]?.doubt.figures).not.toBe(serial([a, b, c])[0]?.doubt.figures);
  expect(serial([a, b])[0]?.doubt.figures).toBe(serial([b, a])[1]?.doubt.figures);
});

test('a hundred of one number stay short', () => {
  const many = Array.from({ length: 100 }, (_, i) => motor(`M-${1000 + i}`, 'Quillmoor', '1234'));
  const longest = Math.max(...serial(many).map(({ doubt }) => doubt.figures.length + doubt.says.length));
  expect(longest).toBeLessThan(600);
});
