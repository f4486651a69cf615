import { expect, test } from 'vitest';
import { predictedOf } from '@/lib/job/predicted';
import { STAGES } from '@/lib/job/step';
import { STEP_IDS, type StepId } from '@/lib/job/step-ids';
import { stepsOf } from '@/lib/job/steps';
import { WHO_DECIDES } from '@/lib/job/who-decides';
import type { MotorInput } from '@/lib/plant/motor';
import type { PumpSetInput } from '@/lib/plant/set';
import { motor, set } from '../matching/easy';
import { by } from './easy-job';

type Differs = Parameters<typeof set>[0];

function stepsFor(differs: Differs = {}, plate: Partial<MotorInput> = {}) {
  const [here, candidate] = [set(differs), motor(plate)];
  return stepsOf(here, candidate, predictedOf(here, candidate, by));
}

const DRIVE = { supply: { start: 'drive', drive: { ratedA: 14, maxHertz: 60 } } } satisfies Differs;
const WASHED = { surroundings: { washdown: true } } satisfies Differs;
const CLASSIFIED = {
  surroundings: { classification: { scheme: 'IEC', zone: 22, group: 'IIIB', tempC: 125 } },
} satisfies Differs;
const GEARED = { mounting: 'face', coupling: { type: 'gear', efficiencyPct: 95 } } satisfies Differs;
const NEEDY: NonNullable<PumpSetInput['needs']> = ['heater', 'brake', 'thermistor'];

/** Each clause of the cautions (design, section 7), the cases it names, and words that have to stand there. */
const CLAUSES: readonly [StepId, RegExp, Differs][] = [
  ['isolate', /Isolate, lock out and prove dead/, {}],
  ['second-feeds', /heater, brake, control/, { needs: [...NEEDY] }],
  ['dc-link', /discharge time.*DC link/, DRIVE],
  ['pressure-heat', /Pressure relieved.*cooled/, {}],
  ['lift', /mass on the plate: out 41 kg, in 41 kg.*eyebolt lifts the motor alone/, {}],
  ['why-failed', /Why the old motor failed/, {}],
  ['turn-by-hand', /turns by hand, before/, {}],
  ['insulation', /before power, thermistors shorted/, { needs: ['thermistor'] }],
  ['insulation', /before power, drive disconnected: at least 5 MΩ/, DRIVE],
  ['rotation', /coupling split, the key removed or held, the guard on/, {}],
  ['rotation', /phase-rotation meter and lead marks/, GEARED],
  ['rotation', /phase-rotation meter and lead marks/, { coupling: { type: 'close-coupled' } }],
  ['rotation', /rotary pump run backwards loses its relief.*never bump a progressing-cavity pump dry/, {}],
  ['overload', /the plate, 6\.6 A, or lower where pump or gear limits it/, {}],
  ['drive-plate', /entered in the drive/, DRIVE],
  ['soft-foot', /at most 0\.06 mm/, {}],
  ['offset', /Alignment, offset/, {}],
  ['gap', /Alignment, angle/, {}],
  ['belts', /Alignment: sheaves in line/, { coupling: { type: 'belt' } }],
  ['valves', /Valves open/, {}],
  ['relief', /Relief in service/, {}],
  ['guard', /Guard on/, {}],
  ['earth-bond', /Earth bond/, {}],
  ['interlocks', /Interlocks/, {}],
  ['hygiene', /tools and shims counted/, WASHED],
  ['area', /competent person/, CLASSIFIED],
  ['running', /expect \d/, {}],
  ['hand-over', /Handed over/, {}],
];

test.each(CLAUSES)('%s: %s', (id, words, differs) => {
  expect(stepsFor(differs).find((step) => step.id === id)?.words).toMatch(words);
});

test('every step is asked for somewhere above, and the whole stands in one order', () => {
  expect([...new Set(CLAUSES.map(([id]) => id))]).toEqual(STEP_IDS);
  for (const differs of [{}, DRIVE, WASHED, CLASSIFIED, GEARED, { coupling: { type: 'belt' as const } }]) {
    const steps = stepsFor(differs);
    const places = steps.map(({ id }) => STEP_IDS.indexOf(id));
    expect(places).toEqual([...new Set(places)].sort((a, b) => a - b));
    const stages = steps.map(({ stage }) => STAGES.indexOf(stage));
    expect(stages).toEqual([...stages].sort((a, b) => a - b));
  }
});

test('what a set has not is not asked', () => {
  const ids = (differs: Differs) => stepsFor(differs).map(({ id }) => id);
  expect(ids({})).not.toContain('dc-link');
  expect(ids({})).not.toContain('hygiene');
  expect(ids({})).not.toContain('area');
  expect(ids(GEARED)).not.toContain('soft-foot');
  expect(ids(GEARED)).not.toContain('offset');
  expect(ids({ failed: null })).not.toContain('why-failed');
  expect(stepsFor({ load: { kind: 'quadratic' } }).find(({ id }) => id === 'rotation')?.words).not.toMatch(/bump/);
});

test('a load of unknown kind is warned of like a rotary pump, and an unknown mass is weighed', () => {
  expect(stepsFor({ load: { kind: null } }).find(({ id }) => id === 'rotation')?.words).toMatch(/bump/);
  expect(stepsFor({}, { massKg: null }).find(({ id }) => id === 'lift')?.words).toMatch(
    /in not in the register, weigh/,
  );
});

test('a marked motor makes a place one that a competent person releases', () => {
  const classification = { scheme: 'IEC', zone: 22, group: 'IIIB', tempC: 125 } as const;
  expect(stepsFor({}, { classification }).map(({ id }) => id)).toContain('area');
});

test('where no current is predicted the step says so, and who decides is said once', () => {
  expect(stepsFor({ load: { shaftKw: null } }).find(({ id }) => id === 'running')?.words).toMatch(
    /none is predicted, the plate has 6\.6 A/,
  );
  expect(WHO_DECIDES).toMatch(/proposes; a competent person decides.*licensed or competent people, to local codes/);
});
