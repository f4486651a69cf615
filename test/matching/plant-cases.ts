import fc from 'fast-check';
import { assess } from '@/lib/matching/assess';
import { defaultSettings } from '@/lib/matching/default-settings';
import { type CriterionId, type Finding, GRADES } from '@/lib/matching/finding';
import { type Motor, motor as motorSchema } from '@/lib/plant/motor';
import { type PumpSet, set as setSchema } from '@/lib/plant/set';
import { motorDimensions } from '@/lib/standards/motor-dimensions';
import { demoPlant } from '@/seed/plant/plant';

const plant = demoPlant({ seed: 11, sets: 240, spares: 120 });
const plates = new Map(plant.motors.map(({ number, plate }) => [number, { id: number, ...plate }]));
const motors = [...plates.values()].map((plate) => motorSchema.parse(plate));
const sets = plant.sets.map(({ input, motor }) =>
  setSchema.parse({ ...input, failed: motor === null ? null : plates.get(motor) }),
);

type Change<T> = (one: T) => T;
const supply =
  (differs: Partial<PumpSet['supply']>): Change<PumpSet> =>
  (set) => ({
    ...set,
    supply: { ...set.supply, ...differs },
  });
const load =
  (differs: Partial<PumpSet['load']>): Change<PumpSet> =>
  (set) => ({ ...set, load: { ...set.load, ...differs } });
const around =
  (differs: Partial<PumpSet['surroundings']>): Change<PumpSet> =>
  (set) => ({
    ...set,
    surroundings: { ...set.surroundings, ...differs },
  });

/** What a plant's records lack, or what differs from one place to the next. */
const setChanges: readonly Change<PumpSet>[] = [
  supply({ volts: null }),
  supply({ hertz: null }),
  supply({ measuredVolts: 437 }),
  supply({ volts: 400, hertz: 50 }),
  supply({ unbalancePct: 2.5 }),
  supply({ start: 'star-delta', overloadIn: null }),
  supply({ start: 'soft', softStartLimitPct: 350 }),
  supply({ capacitorKvar: 3, instantaneousTripA: 60 }),
  load({ shaftKw: null }),
  load({ breakawayPct: null }),
  load({ kind: 'quadratic', staticHeadPct: null }),
  around({ ip: null, washdown: null, classification: undefined }),
  around({ ambientC: 50, altitudeM: 1600 }),
  around({ classification: { scheme: 'NEC', class: 2, division: 2, groups: ['G'], tempCode: 'T4' } }),
  (set) => ({ ...set, failed: null }),
  (set) => ({ ...set, rotation: null, needs: ['brake', 'heater'] }),
  (set) => ({ ...set, base: { ...set.base, transitionBase: true, shimsPresentMm: null } }),
];

const rows =
  (differs: Partial<Motor['ratings'][number]>): Change<Motor> =>
  (motor) => ({
    ...motor,
    ratings: motor.ratings.map((row) => ({ ...row, ...differs })),
  });
const motorChanges: readonly Change<Motor>[] = [
  rows({ amps: null }),
  rows({ rpm: null }),
  rows({ pf: null, efficiencyPct: null }),
  rows({ volts: null, voltsMin: 380, voltsMax: 480 }),
  (motor) => ({ ...motor, ip: 'IP44' }),
  (motor) => ({ ...motor, ip: 'IP67' }),
  (motor) => ({ ...motor, ip: null }),
  (motor) => ({ ...motor, washdown: null, rotation: 'cw' }),
  (motor) => ({ ...motor, has: ['brake', 'thermostat'] }),
  (motor) => ({ ...motor, kind: null, design: null, codeLetter: null }),
  (motor) => ({ ...motor, frame: 'ABC' }),
  // Measured a little lower than its frame: shims decide.
  (motor) => ({
    ...motor,
    measured: {
      ...motor.measured,
      shaftHeightMm: (motorDimensions(motor).dimensions.shaftHeightMm.value ?? 100) - 2.5,
    },
  }),
  (motor) => ({ ...motor, driveDuty: null, constantTorqueRange: null }),
];

const changed = <T>(one: T, changes: readonly Change<T>[]) => changes.reduce((so, change) => change(so), one);

const someSet = fc
  .tuple(fc.constantFrom(...sets), fc.subarray([...setChanges], { maxLength: 3 }))
  .map(([set, changes]) => changed(set, changes));
const someMotor = fc
  .tuple(fc.constantFrom(...motors), fc.subarray([...motorChanges], { maxLength: 2 }))
  .map(([motor, changes]) => changed(motor, changes));

/** A set of the demo plant and a motor for it: often the set's own, so that passes are common; both with odd records. */
export const someCase = fc
  .tuple(someSet, someMotor, fc.boolean())
  .map(([set, other, isOwn]) => ({ set, candidate: isOwn && set.failed !== null ? { ...set.failed } : other }));

/** A set and some motors, ids all different. */
export const someList = fc
  .tuple(someSet, fc.uniqueArray(someMotor, { minLength: 2, maxLength: 8, selector: ({ id }) => id }))
  .map(([set, candidates]) => ({ set, candidates: candidates.map((one) => ({ ...one })) }));

/** The whole judgement, as command line and API give it. */
export const assessed = (set: PumpSet, candidates: readonly Motor[]) =>
  assess({ asOf: '2026-11-25', set, candidates: [...candidates] }, defaultSettings);

/** The result of the only candidate. */
export function judged(set: PumpSet, candidate: Motor) {
  const [result] = assessed(set, [candidate]).results;
  if (result === undefined) throw new Error('a candidate came in and none came out');
  return result;
}

/** How bad an answer is; a question not asked is as good as ok. */
export const badness = (finding: Finding | undefined) => (finding === undefined ? 0 : GRADES.indexOf(finding.grade));
export const answerTo = (findings: readonly Finding[], id: CriterionId) =>
  findings.find(({ criterion }) => criterion === id);
