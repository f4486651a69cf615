import { expect, test } from 'vitest';
import { classification } from '@/lib/review/place/classification';
import { FOR_DRIVE, inPlace, onDrive } from '../in-place';

const zone = (number: 21 | 22) => ({ scheme: 'IEC', zone: number, group: 'IIIB', tempC: 125 }) as const;
const at = (place: object | null | undefined, mark: object | null) =>
  classification(inPlace({ surroundings: { classification: place as never } }, { classification: mark as never }));

// Categories by zone: IEC 60079-0; the duties of the place: IEC 60079-14 (from memory).
test.each([
  ['no mark in a classified place', zone(22), null, 'at-once'],
  ['a mark for the lighter zone in the heavier', zone(21), zone(22), 'at-once'],
  ['the mark of the place is a competent person’s to confirm', zone(22), zone(22), null],
  ['a better mark likewise', zone(22), zone(21), null],
  ['a place that a person called unclassified', null, null, null],
  ['a place nobody classified', undefined, null, null],
] as const)('%s', (_, place, mark, urgency) => {
  expect(at(place, mark)?.urgency ?? null).toBe(urgency);
});

test('on a drive a mark without the duty is void', () => {
  const supply = onDrive({ minHertz: 30, maxHertz: 60 }, { surroundings: { classification: zone(22) } });
  expect(classification(inPlace(supply, { classification: zone(22), driveDuty: 'none' }))?.says).toContain(
    'outside its area certificate',
  );
  expect(classification(inPlace(supply, { classification: zone(22), ...FOR_DRIVE }))).toBeNull();
});
