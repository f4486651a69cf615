import { expect, test } from 'vitest';
import { connectionOf, PLATE_DECIDES } from '@/lib/job/connection/connection-of';
import { leadsDrawing } from '@/lib/job/connection/leads';
import { contextOf } from '@/lib/matching/context';
import type { Motor, MotorInput } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { leadConnections } from '@/lib/standards/tables/lead-connections';
import { motor, set } from '../matching/easy';
import { by } from './easy-job';

const connected = (here: PumpSet, candidate: Motor) => connectionOf(here, candidate, contextOf(here, candidate, by));
const row = (volts: number, more: object = {}) => ({ volts, hertz: 60, hp: 5, rpm: 1750, amps: 6.6, ...more });
const at = (volts: number, start: PumpSet['supply']['start'] = 'direct') => set({ supply: { volts, start } });

const HANDBOOK = 'a trade association’s engineering handbook, NEMA nomenclature, and a motor shop’s table (two texts)';

interface Case {
  name: string;
  plate: Partial<MotorInput>;
  volts: number;
  start?: PumpSet['supply']['start'];
  lines: string;
  joined: string;
}

/** Lines and joins as the handbook prints them. */
const PRINTED: readonly Case[] = [
  {
    name: '6 leads, star',
    plate: { winding: 'star-delta-6', ratings: [row(460, { connection: 'star' }), row(266, { connection: 'delta' })] },
    volts: 460,
    lines: '1 2 3',
    joined: '4&5&6',
  },
  {
    name: '6 leads, delta',
    plate: { winding: 'star-delta-6', ratings: [row(460, { connection: 'star' }), row(266, { connection: 'delta' })] },
    volts: 266,
    lines: '1,6 2,4 3,5',
    joined: '',
  },
  {
    name: '9 leads in star, high',
    plate: { winding: 'star-9', ratings: [row(230), row(460)] },
    volts: 460,
    lines: '1 2 3',
    joined: '4&7 5&8 6&9',
  },
  {
    name: '9 leads in star, low',
    plate: { winding: 'star-9', ratings: [row(230), row(460)] },
    volts: 230,
    lines: '1,7 2,8 3,9',
    joined: '4&5&6',
  },
  {
    name: '9 leads in delta, high',
    plate: { winding: 'delta-9', ratings: [row(230), row(460)] },
    volts: 460,
    lines: '1 2 3',
    joined: '4&7 5&8 6&9',
  },
  {
    name: '9 leads in delta, low',
    plate: { winding: 'delta-9', ratings: [row(230), row(460)] },
    volts: 230,
    lines: '1,6,7 2,4,8 3,5,9',
    joined: '',
  },
  {
    name: '12 leads, star, high',
    plate: { winding: 'star-delta-12', ratings: [row(460, { connection: 'series-star' })] },
    volts: 460,
    lines: '1 2 3',
    joined: '4&7 5&8 6&9 10&11&12',
  },
  {
    name: '12 leads, delta, high',
    plate: { winding: 'star-delta-12', ratings: [row(230), row(460)] },
    volts: 460,
    start: 'star-delta',
    lines: '1,12 2,10 3,11',
    joined: '4&7 5&8 6&9',
  },
  {
    name: '12 leads, star, low',
    plate: { winding: 'star-delta-12', ratings: [row(230, { connection: 'parallel-star' })] },
    volts: 230,
    lines: '1,7 2,8 3,9',
    joined: '4&5&6 10&11&12',
  },
  {
    name: '12 leads, delta, low',
    plate: { winding: 'star-delta-12', ratings: [row(230), row(460)] },
    volts: 230,
    start: 'star-delta',
    lines: '1,6,7,12 2,4,8,10 3,5,9,11',
    joined: '',
  },
];

test.each(PRINTED)('$name', ({ plate, volts, start, lines, joined }) => {
  const told = connected(at(volts, start), motor(plate));
  if (told.kind !== 'known') throw new Error(told.says);
  expect(told.lines.map((group) => group.join(',')).join(' '), HANDBOOK).toBe(lines);
  expect(told.joined.map((group) => group.join('&')).join(' '), HANDBOOK).toBe(joined);
  expect(told.says.at(-1)).toBe(PLATE_DECIDES);
});

test('part-winding leads come from memory in part, and the drawing says so', () => {
  const plate = { winding: 'part-winding-6', ratings: [row(230)] } as const;
  const told = connected(at(230, 'part-winding'), motor({ ...plate, ratings: [...plate.ratings] }));
  expect(told).toMatchObject({
    kind: 'known',
    lines: [
      [1, 7],
      [2, 8],
      [3, 9],
    ],
    status: 'memory',
  });
  expect(told.says).toContain('These leads are from memory: check against the plate’s diagram.');
  expect(told.says).toContain(PLATE_DECIDES);
});

test.each([
  ['no declared winding', at(460), motor({ winding: null })],
  ['nine leads with one voltage alone', at(460), motor({ winding: 'star-9', ratings: [row(460)] })],
  [
    'six leads with one voltage and no connection printed',
    at(400),
    motor({ winding: 'star-delta-6', ratings: [row(400)] }),
  ],
  ['a supply that no row is for', at(600), motor({ winding: 'star-9', ratings: [row(230), row(460)] })],
  [
    'a supply of unknown volts',
    set({ supply: { volts: null } }),
    motor({ winding: 'star-9', ratings: [row(230), row(460)] }),
  ],
  [
    'a plate that contradicts its winding',
    at(460),
    motor({ winding: 'star-9', ratings: [row(460, { connection: 'series-delta' })] }),
  ],
])('%s draws nothing and sends to the plate', (_what, here, candidate) => {
  const told = connected(here, candidate);
  expect(told.kind).toBe('unknown');
  expect(told.says).toMatch(/Follow the plate’s diagram\.$/);
});

test('on a star-delta starter the six ends go to the starter', () => {
  const told = connected(at(400, 'star-delta'), motor({ winding: 'star-delta-6', leads: 6, ratings: [row(400)] }));
  expect(told).toMatchObject({ kind: 'known', link: 'delta' });
  expect(String(told.says)).toMatch(/six ends to the star-delta starter/);
});

test.each(leadConnections.rows.map((one) => [`${one.winding} in ${one.link}`, one] as const))(
  'every lead of %s stands in the drawing once, where its sentence says',
  (_name, { winding, link, lines, joined, status }) => {
    const leads = Number(winding.split('-').at(-1));
    const drawing = leadsDrawing({ kind: 'known', link, volts: 460, lines, joined, says: [PLATE_DECIDES], status });
    const drawn = drawing.leads.map(({ nema }) => nema);
    expect(new Set(drawn).size).toBe(leads);
    expect(drawn).toHaveLength(leads);
    for (const { nema, iec, x, y } of drawing.leads) {
      expect(drawing.sentence).toContain(`${nema} (${iec})`);
      expect(x - drawing.radius).toBeGreaterThanOrEqual(0);
      expect(x + drawing.radius).toBeLessThanOrEqual(drawing.width);
      expect(y + drawing.radius).toBeLessThanOrEqual(drawing.height);
    }
    const places = drawing.leads.map(({ x, y }) => `${x} ${y}`);
    expect(new Set(places).size).toBe(leads);
    // Two leads are wired together in the drawing exactly where the table joins them.
    const groups: readonly (readonly number[])[] = [...lines, ...joined];
    const bars = drawing.wires.filter(({ from, to }) => from.y === to.y);
    expect(bars).toHaveLength(groups.filter((group) => group.length > 1).length);
  },
);

test('the six marks of IEC 60034-8 stand where NEMA’s do: delta links U1 W2, V1 U2, W1 V2', () => {
  // IEC 60034-8, delta of six terminals (from memory); NEMA 1,6 2,4 3,5 from two texts.
  const told = connected(
    at(266),
    motor({ winding: 'star-delta-6', ratings: [row(460, { connection: 'star' }), row(266, { connection: 'delta' })] }),
  );
  if (told.kind !== 'known') throw new Error(told.says);
  expect(leadsDrawing(told).sentence).toBe(
    'Leads for 266 V, delta: L1 to T1 (U1) and T6 (W2); L2 to T2 (V1) and T4 (U2); L3 to T3 (W1) and T5 (V2).',
  );
});
