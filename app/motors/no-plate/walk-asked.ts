import { type MeasuredAsked, measuredAsked, textAsked } from '@/app/frames/measure/measured-asked';
import type { Query } from '@/app/lists/asked-for';
import { massField, type Units } from '@/lib/fields/field';
import { polesOfSpeed } from '@/lib/standards/synchronous-speed';
import { readNumber } from '@/lib/units/read-number';
import { STEPS, type StepId } from './steps';

/** Every input of the walk, by the step that asks for it. */
const ASKED = {
  look: [],
  feet: ['shaftHeightMm', 'holesAcrossMm', 'holesAlongMm', 'holeToShoulderMm'],
  shaft: ['shaftDiameterMm', 'shaftLengthMm', 'keyWidthMm', 'tool'],
  face: ['face', 'faceHoles', 'pitchCircleMm', 'spigotMm', 'faceDiameterMm'],
  leads: ['leads'],
  speed: ['rpm', 'hertz', 'poles'],
  ran: ['volts', 'amps'],
  outside: ['enclosure', 'mass'],
  found: [],
} as const satisfies Record<StepId, readonly string[]>;
export const asksFor = (step: StepId): readonly string[] => ASKED[step];

const SEEN = [...ASKED.leads, ...ASKED.speed, ...ASKED.ran, ...ASKED.outside];
export type SeenName = (typeof SEEN)[number];

/** What an address carries from step to step. */
const CARRIED: readonly string[] = [...Object.values(ASKED).flat(), 'units', 'set', 'motor'];

export interface WalkAsked {
  tape: MeasuredAsked;
  /** As typed, by name. */
  typed: Partial<Record<SeenName, string>>;
  leads: number | null;
  rpm: number | null;
  hertz: number | null;
  /** What a competent person found by the winding. */
  polesFound: number | null;
  volts: number | null;
  amps: number | null;
  enclosure: string | null;
  massKg: number | null;
  /** The set that it stands in, or the motor that it is in the register, where the walk began there. */
  set: string | null;
  motor: string | null;
  problems: { path: string; says: string; step: StepId }[];
  /** Everything that the address carries, as it was sent. */
  carried: [string, string][];
}

export function walkAsked(query: Query, own: Units): WalkAsked {
  const tape = measuredAsked(query, own);
  const typed: WalkAsked['typed'] = {};
  for (const name of SEEN) {
    const text = textAsked(query, name);
    if (text !== '') typed[name] = text;
  }
  const problems: WalkAsked['problems'] = tape.problems.map((one) => ({ ...one, step: stepAsking(one.path) }));
  const number = (name: SeenName, label: string, min: number, max: number): number | null => {
    const text = typed[name];
    if (text === undefined) return null;
    const read = readNumber(text, { min, max });
    if (read.ok) return read.value;
    problems.push({
      path: name,
      says: `${label}: “${text}” is no figure from ${min} to ${max}.`,
      step: stepAsking(name),
    });
    return null;
  };
  const among = (name: SeenName, values: readonly string[]) => values.find((value) => value === typed[name]) ?? null;
  const figure = (text: string | null) => (text === null ? null : Number(text));
  const mass = typed.mass === undefined ? null : massField('massKg', 'Mass').read(typed.mass, tape.units);
  if (mass !== null && !mass.ok)
    problems.push({ path: 'mass', says: `Mass: “${typed.mass}” ${mass.says}.`, step: 'outside' });
  const massKg = mass?.ok ? mass.edit.massKg : null;
  return {
    ...{ tape, typed, problems },
    leads: figure(among('leads', LEADS)),
    rpm: number('rpm', 'Speed', 20, 4_000),
    hertz: number('hertz', 'Frequency', 5, 120),
    polesFound: figure(among('poles', POLES)),
    volts: number('volts', 'Volts', 10, 15_000),
    amps: number('amps', 'Amps', 0.05, 5_000),
    enclosure: among(
      'enclosure',
      ENCLOSURES.map(({ value }) => value),
    ),
    massKg: typeof massKg === 'number' ? massKg : null,
    set: textAsked(query, 'set') || null,
    motor: textAsked(query, 'motor') || null,
    carried: CARRIED.flatMap((name) => carriedAs(name, name === 'units' ? tape.units : textAsked(query, name))),
  };
}

const carriedAs = (name: string, text: string): [string, string][] => (text === '' ? [] : [[name, text]]);

const stepAsking = (name: string): StepId => STEPS.find(({ id }) => asksFor(id).includes(name))?.id ?? 'look';

export const LEADS = ['3', '6', '9', '12'] as const;
export const POLES = ['2', '4', '6', '8', '10', '12'] as const;
export const ENCLOSURES = [
  { value: 'TEFC', words: 'Closed, with a fan under a cowl at the far end' },
  { value: 'TENV', words: 'Closed, without a fan' },
  { value: 'ODP', words: 'Open: air goes through it' },
] as const;

/** What a person found by the winding; else what the speed under load tells. Null: neither, or no such motor. */
export const polesOf = ({ polesFound, rpm, hertz }: WalkAsked): number | null =>
  polesFound ?? (rpm === null || hertz === null ? null : polesOfSpeed(rpm, hertz));
