import { type Motor, type MotorInput, motor } from '@/lib/plant/motor';
import type { Rating } from '@/lib/plant/rating';
import { publishedPlates } from './published-plates';

type Spoil = (plate: Motor) => Partial<MotorInput> | null;

/** Each a mistake that people make with a plate. Null: this plate cannot have it. */
const SPOILS: Readonly<Record<string, Spoil>> = {
  'a speed above the field': (plate) => rows(plate, ({ rpm }) => ({ rpm: rpm && Math.round(rpm * 1.09) })),
  'the speed of two poles less': (plate) =>
    plate.poles === null || plate.poles < 4
      ? null
      : rows(plate, ({ rpm }) => ({ rpm: rpm && (rpm * (plate.poles as number)) / ((plate.poles as number) - 2) })),
  'two poles more than there are': ({ poles }) => (poles === null ? null : { poles: poles + 2 }),
  'two poles less than there are': ({ poles }) => (poles === null || poles < 4 ? null : { poles: poles - 2 }),
  '50 Hz for 60, 60 for 50': (plate) => rows(plate, ({ hertz }) => ({ hertz: hertz === 60 ? 50 : 60 })),
  'amps of the other voltage in the second row': (plate) =>
    second(plate, ({ amps }) => ({ amps: plate.ratings[0]?.amps === amps ? null : (plate.ratings[0]?.amps ?? null) })),
  'amps with the point a place to the right': (plate) => rows(plate, ({ amps }) => ({ amps: amps && amps * 10 })),
  'amps with the point a place to the left': (plate) => rows(plate, ({ amps }) => ({ amps: amps && amps / 10 })),
  'hp typed as kW in the second row': (plate) => second(plate, ({ hp }) => ({ kw: hp, hp: null })),
  'hp typed as kW in every row': (plate) => rows(plate, ({ hp }) => ({ kw: hp, hp: null })),
  'an efficiency of 98.5 %': (plate) => rows(plate, () => ({ efficiencyPct: 98.5 })),
  'an efficiency as a share of one': (plate) =>
    rows(plate, ({ efficiencyPct }) => ({ efficiencyPct: efficiencyPct && efficiencyPct / 100 })),
  'a power ten times as large': (plate) => rows(plate, ({ hp }) => ({ hp: hp && hp * 10 })),
  'a code letter of twice the current': ({ codeLetter }) => {
    const at = LETTERS.indexOf(codeLetter ?? '?');
    return at < 0 || at + 5 >= LETTERS.length ? null : { codeLetter: LETTERS[at + 5] as Motor['codeLetter'] };
  },
  'single-phase': () => ({ phases: 1 }),
  'a face its code has not': ({ frame }) => (frame === null ? null : { frame: `${frame}C`, mounting: 'IM B3' }),
};

const LETTERS = [...'ABCDEFGHJKLMNPRSTUV'];

/** Every plate of MG 1 Part 13, spoilt in one way after the other. */
export function spoiltPlates(): { how: string; motors: Motor[] }[] {
  const whole = publishedPlates()[0]?.motors ?? [];
  return Object.entries(SPOILS).map(([how, spoil]) => ({
    how,
    motors: whole.flatMap((plate) => {
      const differs = spoil(plate);
      return differs === null ? [] : [motor.parse({ ...plain(plate), ...differs })];
    }),
  }));
}

type Row = Partial<Record<keyof Rating, number | string | null>>;

const rows = (plate: Motor, of: (row: Rating) => Row): Partial<MotorInput> | null => {
  const changed = plate.ratings.map((row) => ({ row, differs: of(row) }));
  if (changed.some(({ differs }) => Object.values(differs).every((value) => value === null))) return null;
  return { ratings: changed.map(({ row, differs }) => stamped({ ...row, ...differs })) };
};

const second = (plate: Motor, of: (row: Rating) => Row): Partial<MotorInput> | null => {
  const [first, row, ...rest] = plate.ratings;
  if (!first || !row) return null;
  const differs = of(row);
  if (Object.values(differs).every((value) => value === null)) return null;
  return { ratings: [first, { ...row, ...differs }, ...rest].map(stamped) };
};

/** A row as it is told: hp or kW, never both. */
const stamped = (row: Row) =>
  (row.hp == null ? row : { ...row, kw: null }) as NonNullable<MotorInput['ratings']>[number];

const plain = (plate: Motor): MotorInput => ({ ...plate, ratings: plate.ratings.map(stamped) });
