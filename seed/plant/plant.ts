import type { MotorInput } from '@/lib/plant/motor';
import type { PumpSetInput } from '@/lib/plant/set';
import { AREAS, type DemoArea, type Line } from './areas';
import { MAKERS, type Size, serialOf } from './catalogue';
import { type Holding, kwOf, plateOf, rpmOf, sizesOf } from './plates';
import { PUMP_RULES, trainOf } from './pumps';
import { type Dice, dice } from './random';

export interface DemoMotor {
  number: string;
  maker: string;
  serial: string;
  plate: Omit<MotorInput, 'id'>;
  place: { set: string } | { store: string; shelf: string } | 'at-repair' | 'on-order';
}

export interface DemoSet {
  area: string;
  service: string;
  pump: string;
  /** 1 stops the plant, 3 can wait. */
  criticality: 1 | 2 | 3;
  /** The set without its failed motor: that is whatever motor is in it. */
  input: Omit<PumpSetInput, 'failed'>;
  /** Plant number of the motor in it; null when its plate is missing and no motor is on record. */
  motor: string | null;
  /** What the set's own motor comes out as when it is judged for its own place. */
  ownVerdict: 'straight-swap' | 'check-first';
  /** Why the own motor is no straight swap, where the demo means that. */
  because: string | null;
}

export interface DemoPlant {
  site: string;
  areas: readonly DemoArea[];
  stores: readonly { name: string; shelves: readonly string[] }[];
  sets: DemoSet[];
  motors: DemoMotor[];
}

const STORES = [
  { name: 'Main store', shelves: ['A1', 'A2', 'A3', 'A4', 'B1', 'B2', 'B3', 'B4'] },
  { name: 'Effluent hut', shelves: ['E1', 'E2'] },
] as const;

/** The same seed and sizes make the same plant. `sets` of 120 is the demo; the bench asks for thousands. */
export function demoPlant({ seed = 7, sets = 120, spares = 70 } = {}): DemoPlant {
  const random = dice(seed);
  const plant: DemoPlant = { site: 'Harrowmere Works', areas: AREAS, stores: STORES, sets: [], motors: [] };
  const numbers = { next: 100 };
  const share = AREAS.flatMap((area) => area.pumps).reduce((sum, { count }) => sum + count, 0);
  const rounds = Math.ceil(sets / share);
  const perArea = new Map<string, number>();
  for (let round = 0; round < rounds; round += 1)
    for (const area of AREAS)
      for (const { service, kind, count } of area.pumps)
        for (let i = 0; i < count && plant.sets.length < sets; i += 1) {
          const serial = (perArea.get(area.code) ?? 100) + 1;
          perArea.set(area.code, serial);
          addSet(plant, random, numbers, area, { tag: `${area.code}-${serial}`, service: `${service} ${i + 1}`, kind });
        }
  for (let i = 0; i < spares; i += 1) addSpare(plant, random, numbers);
  return plant;
}

type Numbers = { next: number };
const nextNumber = (numbers: Numbers) => {
  numbers.next += 1;
  return `M-${String(numbers.next).padStart(4, '0')}`;
};

function addSet(
  plant: DemoPlant,
  random: Dice,
  numbers: Numbers,
  area: DemoArea,
  { tag, service, kind }: { tag: string; service: string; kind: keyof typeof PUMP_RULES },
) {
  const rule = PUMP_RULES[kind];
  const { line } = area;
  const isIec = line === 'iec-60' || line === 'skid-50';
  const candidates = sizesOf(line).filter(({ poles }) => rule.poles.includes(poles));
  const size = random.pick(candidates.length > 0 ? candidates : sizesOf(line));
  const drive = random.pick(rule.drives);
  const onFace = drive === 'gear' && random.chance(0.4) && line !== 'u-frame' && line !== 'single-phase';
  const holding: Holding = onFace ? 'face' : 'foot';
  const train = trainOf(random, rule, drive, kwOf(line, size), rpmOf(line, size));
  const plate = plateOf(line, size, drive === 'close-coupled' ? 'foot' : holding, area, random);
  if (drive === 'close-coupled' && !isIec) plate.frame = size.frame.replace(/T$/, 'JM');
  const isCloseIec = drive === 'close-coupled' && isIec;
  const isDriven = line !== 'single-phase' && line !== 'u-frame' && random.chance(0.2);
  if (isDriven) {
    plate.driveDuty = 'inverter';
    plate.constantTorqueRange = 10;
  }
  const supply = supplyOf(random, line, size, plate, isDriven);
  if (onFace) train.coupling.input = isIec ? 'quill' : 'hub';
  if (train.coupling.input === 'quill') {
    train.coupling.quill = { depthMm: 150, bushing: random.chance(0.3) };
    delete train.coupling.hub;
  }
  const mounting: PumpSetInput['mounting'] = holding === 'face' ? 'face' : 'foot';
  const motor = plate.phases === null ? null : nextNumber(numbers);
  const classed = area.surroundings.classification;
  plant.sets.push({
    area: area.code,
    service,
    pump: rule.words,
    criticality: random.pick([1, 2, 2, 3] as const),
    motor,
    ownVerdict: classed ? 'check-first' : 'straight-swap',
    because: classed ? 'a classified place is for a competent person to approve, always' : null,
    input: {
      tag,
      mounting,
      shaftDirection: 'horizontal',
      rotation: random.pick(['cw', 'ccw', 'either'] as const),
      coupling: isCloseIec
        ? { ...train.coupling, type: 'coupling', input: 'hub', hub: { replaceable: true } }
        : train.coupling,
      base: mounting === 'face' ? {} : baseOf(random, isIec),
      supply,
      load: train.load,
      surroundings: area.surroundings,
      needs: isIec ? ['thermistor'] : [],
    },
  });
  if (motor !== null) addMotor(plant, random, motor, plate, { set: tag });
}

function baseOf(random: Dice, isIec: boolean): NonNullable<PumpSetInput['base']> {
  return {
    shimLimitMm: 6,
    shimsPresentMm: random.chance(0.7) ? random.pick([0.5, 1, 1.5, 2, 3]) : null,
    slotting: random.chance(0.3),
    transitionBase: random.chance(0.4),
    cableEntry: isIec ? 'top' : 'left',
  };
}

/** The starter was chosen for the motor that stands there: dial around its amps, contactor and cable above. */
function supplyOf(
  random: Dice,
  line: Line,
  { power }: Size,
  plate: Omit<MotorInput, 'id'>,
  isDriven: boolean,
): NonNullable<PumpSetInput['supply']> {
  const skid = line === 'skid-50';
  const phases = line === 'single-phase' ? 1 : 3;
  const volts = line === 'single-phase' ? 230 : skid ? 400 : 480;
  const hertz = skid ? 50 : 60;
  const row = plate.ratings?.find((r) => r.hertz === hertz && r.volts === (skid ? 400 : phases === 1 ? 230 : 460));
  const amps = row?.amps;
  if (!amps) throw new Error(`no amps on the plate of ${plate.frame}`);
  const isStarDelta = plate.winding === 'star-delta-6' && !isDriven && power >= 7.5 && random.chance(0.7);
  const upTo = (figures: readonly number[], least: number) => figures.find((f) => f >= least) ?? least;
  const protection = {
    overloadMinA: Math.round(amps * (isStarDelta ? 0.58 : 1) * 8) / 10,
    overloadMaxA: Math.round(amps * (isStarDelta ? 0.58 : 1) * 12.5) / 10,
    overloadIn: isStarDelta ? 'phase' : 'line',
    contactorA: upTo([9, 12, 18, 25, 32, 40, 50, 65, 80], amps * 1.15),
    cableA: upTo([15, 20, 28, 36, 50, 65, 85, 115], amps * 1.25),
  } as const;
  if (!isDriven) return { phases, volts, hertz, start: isStarDelta ? 'star-delta' : 'direct', ...protection };
  return {
    phases,
    volts,
    hertz,
    start: 'drive',
    drive: {
      ratedA: upTo([3, 5, 8, 11, 14, 21, 27, 34, 40, 52, 65], amps * 1.1),
      overloadPct: 150,
      outputVolts: skid ? 400 : 460,
      baseHertz: hertz,
      minHertz: 20,
      maxHertz: hertz,
      cableM: Math.round(random.between(8, 60)),
      filter: random.chance(0.3),
    },
  };
}

function addMotor(
  plant: DemoPlant,
  random: Dice,
  number: string,
  plate: Omit<MotorInput, 'id'>,
  place: DemoMotor['place'],
) {
  const maker = random.pick(MAKERS);
  plant.motors.push({ number, maker, serial: serialOf(maker, random), plate, place });
}

/** Most spares are bought for a set that stands there; some are odd lots, some wait at repair or on order. */
function addSpare(plant: DemoPlant, random: Dice, numbers: Numbers) {
  const area = random.pick(AREAS);
  const size = random.pick(sizesOf(area.line));
  const holding: Holding =
    area.line === 'u-frame' || area.line === 'single-phase'
      ? 'foot'
      : random.pick(['foot', 'foot', 'foot-and-face', 'face'] as const);
  const plate = plateOf(area.line, size, holding, area, random);
  if (random.chance(0.08) && area.line === 'nema') plate.frame = `${plate.frame}Z`;
  if (random.chance(0.15)) plate.driveDuty = 'inverter';
  if (random.chance(0.1)) plate.ip = null;
  const year = random.pick([2021, 2023, 2024, 2025, 2026]);
  const month = String(1 + Math.floor(random.between(0, 9))).padStart(2, '0');
  plate.spare = {
    shelvedOn: `${year}-${month}-12`,
    testedOn: random.chance(0.6) ? `${Math.max(year, 2025)}-${month}-20` : null,
    insulationMohm: random.chance(0.9) ? Math.round(random.between(50, 2000)) : random.pick([0.6, 2]),
  };
  const store = random.chance(0.85) ? STORES[0] : STORES[1];
  const place: DemoMotor['place'] = random.chance(0.06)
    ? 'at-repair'
    : random.chance(0.04)
      ? 'on-order'
      : { store: store.name, shelf: random.pick<string>(store.shelves) };
  addMotor(plant, random, nextNumber(numbers), plate, place);
}
