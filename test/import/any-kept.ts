import fc from 'fast-check';
import type { z } from 'zod';
import type { Existing, KeptMotor, KeptSet } from '@/lib/import/kept';
import { type MotorInput, motor as motorSchema } from '@/lib/plant/motor';
import { type PumpSetInput, set as setSchema } from '@/lib/plant/set';

/** Words as people write them, and any text at all that a register keeps on one line. */
const line = (most: number): fc.Arbitrary<string> =>
  fc
    .oneof(
      fc.constantFrom(
        'P-101',
        'NA',
        '-',
        '?',
        'Total',
        "'42",
        '"so"',
        '1.23E+05',
        '2026-03-04',
        '04-Dec',
        '#12',
        'A / B',
        'n/a',
        'x',
      ),
      fc.string({ minLength: 1, maxLength: Math.min(most, 30), unit: 'grapheme' }),
      fc.string({ minLength: 1, maxLength: Math.min(most, 30) }),
    )
    .map((text) => text.replaceAll(/[\p{Cc}\p{Cs}\p{Zl}\p{Zp}]/gu, ' ').trim())
    .filter((text) => text !== '' && text.length <= most);

const day = fc
  .date({ min: new Date('1950-01-01T00:00:00Z'), max: new Date('2099-12-31T00:00:00Z'), noInvalidDate: true })
  .map((date) => date.toISOString().slice(0, 10));

/** What the schema of one key takes, told or not. Read from the schema, so that a new key is exported or the test fails. */
function any(schema: z.core.$ZodType, key: string, known: Known): fc.Arbitrary<unknown> {
  const def = schema._zod.def as unknown as Def;
  const inner = def.innerType ?? def.in;
  if (inner) return any(inner, key, known);
  const own = known[key];
  if (own) return own;
  const checks = (def.checks ?? []).map((check) => check._zod.def);
  switch (def.type) {
    case 'object':
      return fc.record(
        Object.fromEntries(Object.entries(def.shape ?? {}).map(([name, part]) => [name, any(part, name, known)])),
        {
          requiredKeys: Object.keys(def.shape ?? {}).filter((name) =>
            ['scheme', 'zone', 'class', 'division'].includes(name),
          ),
        },
      );
    case 'number': {
      const bound = (kind: string) => checks.find(({ check }) => check === kind)?.value;
      const [min, max] = [bound('greater_than') ?? -1e6, bound('less_than') ?? 1e6];
      const isWhole = checks.some(({ format }) => format === 'safeint');
      const step = bound('multiple_of') ?? 1;
      if (isWhole) return fc.integer({ min: Math.ceil(min / step), max: Math.floor(max / step) }).map((n) => n * step);
      const least = Math.max(min, min === 0 ? 0.01 : min);
      return fc.oneof(
        fc.integer({ min: Math.ceil(least * 100), max: Math.floor(max * 100) }).map((n) => n / 100),
        // No tape or meter tells a millionth of a millionth.
        fc.double({ min: least, max, noNaN: true }).filter((n) => n === 0 || Math.abs(n) > 1e-6),
      );
    }
    case 'boolean':
      return fc.boolean();
    case 'enum':
      return fc.constantFrom(...Object.values(def.entries ?? {}));
    case 'literal':
      return fc.constantFrom(...(def.values ?? []));
    case 'array':
      return fc.array(any(def.element as z.core.$ZodType, `${key}[]`, known), { maxLength: 4 });
    case 'union':
      return fc.oneof(...(def.options ?? []).map((option) => any(option, key, known)));
    case 'string': {
      if (def.format === 'date' || checks.some(({ format }) => format === 'date')) return day;
      return line(checks.find(({ check }) => check === 'max_length')?.maximum ?? 80);
    }
    default:
      throw new Error(`no values known for ${key}: ${def.type}`);
  }
}

type Known = Readonly<Record<string, fc.Arbitrary<unknown>>>;
interface Def {
  type: string;
  format?: string;
  innerType?: z.core.$ZodType;
  in?: z.core.$ZodType;
  element?: z.core.$ZodType;
  shape?: Record<string, z.core.$ZodType>;
  options?: z.core.$ZodType[];
  entries?: Record<string, string>;
  values?: unknown[];
  checks?: { _zod: { def: { check: string; value?: number; format?: string; maximum?: number } } }[];
}

/** What its schema takes only in a form of its own. */
const forms: Known = {
  ip: fc.constantFrom('IP55', 'IP5X', 'IP66', 'IP69K', 'IP00'),
  duty: fc.constantFrom('S1', 'S3', 'S10'),
  tempCode: fc.constantFrom('T1', 'T3C', 'T4'),
};
/** Words of a plate that are known here. */
const tame: Known = {
  ...forms,
  frame: fc.constantFrom('184TC', '112M', 'NEMA 56', '182/4T', 'L215JM', '100L'),
  enclosure: fc.constantFrom('TEFC', 'ODP', 'XP'),
};
const mountings = fc.constantFrom('IM B3', 'IM B35', 'W-2', 'IM 3001', 'foot');

const maybe = <T>(value: fc.Arbitrary<T>): fc.Arbitrary<T | null> => fc.option(value, { nil: null });

const wildMotor = any(motorSchema, '', forms) as fc.Arbitrary<MotorInput>;
const tameMotor = fc
  .tuple(any(motorSchema, '', tame) as fc.Arbitrary<MotorInput>, maybe(mountings))
  .map(([motor, mounting]): MotorInput => ({ ...motor, mounting }));
const anySet = (any(setSchema, '', { ...forms, failed: fc.constant(null) }) as fc.Arbitrary<PumpSetInput>).map(
  ({ failed: _, ...set }) => set,
);

const keptMotor = (motor: fc.Arbitrary<MotorInput>, isInSet: boolean): fc.Arbitrary<KeptMotor> =>
  fc
    .record({
      motor: fc
        .tuple(motor, line(60), fc.boolean())
        // Power is stamped in hp or in kW.
        .map(([one, id, isHp]) => ({
          ...one,
          id,
          ...(one.ratings
            ? { ratings: one.ratings.map((row) => ({ ...row, ...(isHp ? { kw: null } : { hp: null }) })) }
            : {}),
        }))
        .filter((one) => motorSchema.safeParse(one).success),
      place: fc.constantFrom('on-shelf', 'at-repair', 'on-order', 'scrapped'),
      store: line(80),
      shelf: line(80),
      maker: maybe(line(80)),
      serial: maybe(line(60)),
      condition: maybe(line(200)),
      rewinds: maybe(fc.integer({ min: 0, max: 50 })),
      note: maybe(line(2_000)),
      unread: maybe(line(4_000)),
    })
    .map(({ place, store, shelf, ...kept }): KeptMotor => {
      if (isInSet) return { ...kept, place: 'in-set', setTag: '', store: null, shelf: null };
      const isOnShelf = place === 'on-shelf';
      return {
        ...kept,
        place: place as KeptMotor['place'],
        setTag: null,
        store: isOnShelf ? store : null,
        shelf: isOnShelf ? shelf : null,
      };
    });

const keptSet: fc.Arbitrary<KeptSet> = fc.record({
  set: fc
    .tuple(anySet, line(60), fc.constantFrom('foot', 'face', 'foot-and-face'))
    .map(([set, tag, mounting]) => ({ ...set, tag, mounting }) as KeptSet['set'])
    .filter((set) => setSchema.safeParse(set).success),
  service: maybe(line(200)),
  criticality: maybe(fc.integer({ min: 1, max: 4 })),
  area: maybe(line(80)),
  pump: maybe(
    fc.record({ description: line(200), kind: maybe(line(60)), maker: maybe(line(80)), serial: maybe(line(60)) }),
  ),
  supplyName: maybe(line(80)),
  note: maybe(line(2_000)),
  holds: fc.constant(null),
});

const together = (motor: fc.Arbitrary<MotorInput>): fc.Arbitrary<Existing> =>
  fc.tuple(keptSet, maybe(keptMotor(motor, true))).map(([set, in_]) => ({
    set: { ...set, holds: in_?.motor.id ?? null },
    motor: in_ && { ...in_, setTag: set.set.tag },
  }));

/** Anything the register may hold; and with it only words of plates that are known here. */
export const anyKept = {
  sets: { wild: together(wildMotor), tame: together(tameMotor) },
  motors: {
    wild: keptMotor(wildMotor, false).map((motor): Existing => ({ set: null, motor })),
    tame: keptMotor(tameMotor, false).map((motor): Existing => ({ set: null, motor })),
  },
};
