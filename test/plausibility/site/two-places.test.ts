import { expect, test } from 'vitest';
import { twoPlaces } from '@/lib/plausibility/site/two-places';

const of = (...numbers: string[]) =>
  twoPlaces(
    numbers.map((number, i) => ({
      id: number,
      number,
      maker: null,
      serial: null,
      place: i === 0 ? 'in SK-104' : 'on shelf A1',
    })),
  );
const grades = (...numbers: string[]) => of(...numbers).map(({ id, doubt }) => `${id} ${doubt.grade}`);

test.each([
  ['other numbers', ['M-0412', 'M-0413'], []],
  ['the same in small letters', ['M-0412', 'm-0412'], ['M-0412 wrong', 'm-0412 wrong']],
  ['the same without its dash', ['M-0412', 'M0412'], ['M-0412 wrong', 'M0412 wrong']],
  ['O for 0', ['M-0412', 'M-O412'], ['M-0412 doubtful', 'M-O412 doubtful']],
  ['I for 1', ['M-0412', 'M-04I2'], ['M-0412 doubtful', 'M-04I2 doubtful']],
  ['5 and S are two figures here', ['M-0415', 'M-041S'], []],
])('%s', (_, numbers, expected) => {
  expect(grades(...numbers)).toEqual(expected);
});

test('both places are told', () => {
  expect(of('M-0412', 'm-0412')[0]?.doubt).toMatchObject({
    field: 'id',
    says: 'M-0412 in SK-104 reads like m-0412 on shelf A1: a motor is in one place.',
  });
});

test('numbers of signs alone are not compared', () => {
  expect(of('--', '..')).toEqual([]);
});
