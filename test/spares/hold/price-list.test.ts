import { describe, expect, test } from 'vitest';
import { type ListedPrice, nameOf, readPriceList } from '@/lib/spares/hold/price-list';
import { priceOf } from '@/lib/spares/hold/price-of';
import { motor } from '../../matching/easy';

const plain = { poles: null, frame: null, builds: [] };

describe('A line of a price list', () => {
  test.each<[string, Omit<ListedPrice, 'line'>]>([
    ['5.5 kW: 640', { ...plain, power: { kw: 5.5 }, price: 640 }],
    ['5,5kW = 640.50', { ...plain, power: { kw: 5.5 }, price: 640.5 }],
    ['7 1/2 hp\t720', { ...plain, power: { hp: 7.5 }, price: 720 }],
    ['370 W; 95', { ...plain, power: { kw: 0.37 }, price: 95 }],
    ['7.5 hp, 4 poles, 213t: 720', { ...plain, power: { hp: 7.5 }, poles: 4, frame: '213T', price: 720 }],
    [
      '5.5 kW 2-pole 132S brake washdown: 1 200',
      {
        ...{ power: { kw: 5.5 }, poles: 2, frame: '132S', builds: ['washdown', 'brake'], price: 1200 },
      },
    ],
  ])('“%s” is read', (text, read) => {
    expect(readPriceList(text)).toEqual({ prices: [{ line: 1, ...read }], problems: [] });
  });

  test.each([
    ['5.5 640', 'a line is a rating, a colon and a price, such as “5.5 kW: 640”'],
    ['5.5: 640', 'tell the power with its unit first'],
    ['five kW: 640', 'tell the power with its unit first'],
    ['5.5 kW: 640 EUR', 'the price “640 EUR” is not a figure: write the figure alone'],
    ['5.5 kW: 0', 'the price “0” is not between 0.01'],
    ['5.5 kW: 1.450', 'could be 1.45 (dot as decimal sign) or 1450'],
    ['4.8/5.5 kW: 640', 'one power a line'],
    ['5.5 kW, 3 poles: 640', 'there is no motor of 3 poles'],
    ['5.5 kW, 2 poles, 4 poles: 640', 'the poles stand there twice'],
    ['5.5 kW, 132S, 132M: 640', 'are two frames'],
    ['5.5 kW, blue: 640', '“blue” is no number of poles'],
  ])('“%s” is refused, and what would be right is told', (text, says) => {
    const { prices, problems } = readPriceList(text);
    expect(prices).toEqual([]);
    expect(problems).toHaveLength(1);
    expect(problems[0]).toContain('Line 1, “');
    expect(problems[0]).toContain(says);
  });
});

describe('A price list', () => {
  test('names the lines as they stand, empty ones among them, and reads those beside a bad one', () => {
    const { prices, problems } = readPriceList('5.5 kW: 640\r\n\r\n7.5 kW 800\r\n11 kW: 990\r\n5.50 kW: 650');
    expect(prices.map(({ line, price }) => [line, price])).toEqual([
      [1, 640],
      [4, 990],
    ]);
    expect(problems.map((says) => says.slice(0, 6))).toEqual(['Line 3', 'Line 5']);
    expect(problems[1]).toContain('line 1 prices the same');
  });

  test('of more lines than it can have says so', () => {
    const { problems } = readPriceList(Array.from({ length: 201 }, (_, i) => `${i + 1} kW: 100`).join('\n'));
    expect(problems).toEqual(['The list has 201 lines, and 200 are read: leave some out.']);
  });

  test('names each line so that it reads the same again', () => {
    const { prices } = readPriceList('7.5 hp, 4p, 213T, area: 720\n0.25 kW: 90');
    const again = readPriceList(prices.map((one) => `${nameOf(one)}: ${one.price}`).join('\n'));
    expect(again).toEqual({ prices, problems: [] });
  });
});

describe('The price of a motor', () => {
  const kw = (more: Parameters<typeof motor>[0] = {}) =>
    motor({ frame: '132S', poles: 4, ratings: [{ hp: null, kw: 5.5 }], ...more });
  const priced = (text: string, of: ReturnType<typeof motor>, rule: [number | null, number | null] = [100, 50]) => {
    const { prices, problems } = readPriceList(text);
    expect(problems).toEqual([]);
    const price = priceOf(of, { list: prices, each: rule[0], perKw: rule[1] });
    return price === null ? null : price.by === 'rule' ? price.amount : `line ${price.from.line}: ${price.amount}`;
  };

  test('is the list’s before the rule’s, and the rule’s where no line names it', () => {
    expect(priced('5.5 kW: 640', kw())).toBe('line 1: 640');
    expect(priced('7.5 kW: 640', kw())).toBe(100 + 50 * 5.5);
    expect(priced('', kw())).toBe(375);
  });

  test('is that of the line that tells most, of equals the upper one', () => {
    expect(priced('5.5 kW: 1\n5.5 kW, 4 poles: 2\n5.5 kW, 4 poles, 132S: 3', kw())).toBe('line 3: 3');
    expect(priced('5.5 kW: 1\n5.5 kW, 132S: 2\n5.5 kW, 4 poles: 3', kw())).toBe('line 2: 2');
    expect(priced('5.5 kW: 1\n5.5 kW, 2 poles: 2\n5.5 kW, 132M: 3', kw())).toBe('line 1: 1');
  });

  test('a line in hp is of motors rated in hp, one in kW of those rated in kW', () => {
    const hp = motor({ ratings: [{ hp: 7.5, kw: undefined }] });
    expect(priced('7.5 hp: 720\n5.6 kW: 1', hp)).toBe('line 1: 720');
    expect(priced('5.6 kW: 1', hp, [null, null])).toBeNull();
    expect(priced('7.5 hp: 720', kw(), [null, null])).toBeNull();
    expect(priced('0.33 hp: 90', motor({ ratings: [{ hp: 1 / 3, kw: undefined }] }))).toBe('line 1: 90');
  });

  test('a line of plain motors prices none that is built otherwise, and the other way', () => {
    const washed = kw({ washdown: 'stainless' });
    expect(priced('5.5 kW: 640', washed, [null, null])).toBeNull();
    expect(priced('5.5 kW: 640\n5.5 kW, washdown: 980', washed)).toBe('line 2: 980');
    expect(priced('5.5 kW, washdown: 980', kw(), [null, null])).toBeNull();
    expect(priced('5.5 kW, washdown: 980', kw({ washdown: 'painted', has: ['brake'] }), [null, null])).toBeNull();
  });

  test('is not told where half of the rule is missing', () => {
    expect(priced('', kw(), [100, null])).toBeNull();
    expect(priced('', kw(), [null, 50])).toBeNull();
  });
});
