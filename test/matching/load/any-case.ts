import fc from 'fast-check';
import { type Motor, motor } from '@/lib/plant/motor';
import { AUXILIARIES, KINDS, WINDINGS } from '@/lib/plant/motor-words';
import { CONNECTIONS } from '@/lib/plant/rating';
import { FOOTINGS, type PumpSet, set } from '@/lib/plant/set';

/**
 * Any motor and any set the schemas take, likely or not: every field may be untold, every figure anything from a hundred-
 * thousandth of its limit to the limit itself. `test/matching/plant-cases.ts` makes likely ones.
 */
const told = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: null, freq: 9 });
/** Spread over the decades, and now and then a figure that plates and pumps really have. */
const upTo = (max: number, ...usual: number[]) =>
  told(
    fc.oneof(
      { weight: 1, arbitrary: fc.double({ min: -5, max: 0, noNaN: true }).map((e) => max * 10 ** e) },
      { weight: usual.length > 0 ? 15 : 0, arbitrary: fc.constantFrom(...usual, 1) },
    ),
  );
const fromZero = (max: number, ...usual: number[]) => fc.oneof(upTo(max, ...usual), fc.constant(0));
const one = <T>(values: readonly T[]) => told(fc.constantFrom(...values));
const yesNo = told(fc.boolean());

const powers = { hp: upTo(20_000, 1, 3, 5, 7.5, 10), kw: upTo(15_000, 2.2, 3.7, 4, 5.5, 7.5) };
const rating = fc
  .record({
    volts: upTo(15_000, 230, 400, 460, 480),
    hertz: upTo(400, 50, 60),
    power: fc.oneof(
      powers.hp.map((hp) => ({ hp })),
      powers.kw.map((kw) => ({ kw })),
    ),
    rpm: upTo(24_000, 1450, 1500, 1750, 1800, 1160, 3500, 2900),
    amps: upTo(5_000, 3, 6.6, 12),
    connection: one(CONNECTIONS),
    pf: upTo(1, 0.82),
    efficiencyPct: upTo(100, 89.5),
    serviceFactor: told(fc.double({ min: 1, max: 2, noNaN: true })),
  })
  .map(({ power, ...row }) => ({ ...row, ...power }));

const motorInput = fc.record({
  id: fc.constant('M-1'),
  kind: one(KINDS),
  frame: one(['184T', '184TC', '112M', '213T', '56C', '182JM', 'nonsense']),
  mounting: one(['IM B3', 'IM B35', 'IM V1']),
  phases: one([1, 3] as const),
  poles: one([2, 4, 6, 8, 12, 64]),
  leads: one([3, 6, 9, 12]),
  winding: one(WINDINGS),
  ratings: fc.array(rating, { maxLength: 3 }),
  serviceFactor: told(fc.double({ min: 1, max: 2, noNaN: true })),
  design: one(['A', 'B', 'C', 'D', 'E', 'N', 'NE', 'H', 'HEY'] as const),
  codeLetter: one(['A', 'G', 'J', 'V'] as const),
  lockedRotorPct: upTo(600, 150, 275),
  breakdownPct: upTo(800, 200, 300),
  enclosure: one(['TEFC', 'ODP', 'TENV', 'TEBC']),
  ip: one(['IP55', 'IP23', 'IPXX']),
  ambientC: told(fc.double({ min: -60, max: 120, noNaN: true })),
  duty: one(['S1', 'S3', 'S10']),
  driveDuty: one(['none', 'general', 'inverter'] as const),
  constantTorqueRange: told(fc.constantFrom(1, 4, 10, 1000)),
  maxRpm: upTo(30_000, 1800, 3600),
  has: told(fc.subarray([...AUXILIARIES])),
});

export const anyMotor: fc.Arbitrary<Motor> = motorInput.map((input) => motor.parse(input));

const gap = fc.tuple(fromZero(500), fromZero(500)).map(([a, b]) => inOrder(a, b));
const inOrder = (a: number | null, b: number | null) => (a !== null && b !== null && a > b ? [b, a] : [a, b]);

const drive = fc
  .record({
    ratedA: upTo(5_000, 7, 14),
    overloadPct: told(fc.constantFrom(100, 110, 150, 400)),
    outputVolts: upTo(15_000, 460, 400),
    baseHertz: upTo(400, 50, 60),
    range: fc.tuple(upTo(400, 5, 20, 30), upTo(400, 50, 60, 90)).map(([a, b]) => inOrder(a, b)),
    cableM: fromZero(2_000),
    filter: yesNo,
  })
  .map(({ range: [minHertz, maxHertz], ...rest }) => ({ ...rest, minHertz, maxHertz }));

export const anySet: fc.Arbitrary<PumpSet> = fc
  .record({
    mounting: fc.constantFrom(...FOOTINGS),
    failed: told(motorInput),
    coupling: fc.record({
      type: one(['coupling', 'close-coupled', 'gear', 'belt'] as const),
      ratio: upTo(500, 1, 5),
      efficiencyPct: upTo(100, 95),
      maxTorqueNm: upTo(1_000_000, 20, 50),
      sheave: fc.record({ pitchDiameterMm: upTo(3_000, 150), changeable: yesNo }),
    }),
    supply: fc.record({
      phases: one([1, 3] as const),
      volts: upTo(15_000, 230, 400, 460, 480),
      hertz: upTo(400, 50, 60),
      measuredVolts: upTo(15_000, 440),
      unbalancePct: fromZero(100, 1, 2, 3),
      start: one(['direct', 'star-delta', 'part-winding', 'soft', 'drive'] as const),
      directAllowed: yesNo,
      softStartLimitPct: told(fc.constantFrom(100, 300, 1000)),
      instantaneousTripA: upTo(100_000, 60),
      drive,
    }),
    load: fc.record({
      kind: one(['constant-torque', 'quadratic'] as const),
      shaftKw: upTo(15_000, 2, 3.1, 3.7),
      atPumpRpm: upTo(24_000, 350, 1750, 1450),
      maxPumpRpm: upTo(24_000, 400, 1800),
      flowTolerancePct: fromZero(100, 1, 5),
      breakawayPct: fromZero(1_000, 100, 150),
      staticHeadPct: fromZero(100, 50),
    }),
    surroundings: fc.record({
      ambientC: told(fc.double({ min: -60, max: 120, noNaN: true })),
      altitudeM: told(fc.double({ min: -500, max: 6_000, noNaN: true })),
    }),
    gap,
  })
  .map(({ gap: [gapMinMm, gapMaxMm], ...input }) =>
    set.parse({ tag: 'P-1', ...input, coupling: { ...input.coupling, gapMinMm, gapMaxMm } }),
  );
