import type { MotorInput } from '@/lib/plant/motor';
import type { PumpSetInput } from '@/lib/plant/set';
import { AREAS, type DemoArea } from './areas';
import { MAKERS, serialOf } from './catalogue';
import { type DemoMotor, type DemoPlant, type Numbers, nextNumber } from './demo';
import { type Holding, kwOf, plateOf, rpmOf, sizesOf } from './plates';
import { PUMP_RULES, trainOf } from './pumps';
import { type Dice, dice } from './random';
import { addSpare, STORES } from './spares';
import { supplyOf } from './supply';

/**
 * A plant by rules: the same seed and sizes make the same plant. 111 sets are one of each that the areas name; the bench
 * asks for thousands. `today` is the day that ages on the shelf are counted from.
 */
export function demoPlant({ seed = 7, sets = 111, spares = 62, today = '2026-11-25' } = {}): DemoPlant {
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
  for (let i = 0; i < spares; i += 1) addSpare(plant, random, numbers, today);
  return plant;
}

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
  const isPumpShaft = drive === 'close-coupled' && !isIec;
  if (isPumpShaft) {
    plate.frame = size.frame.replace(/T$/, 'JM');
    plate.mounting = 'IM B14'; // it hangs on the pump's bracket by its face
  }
  const isCloseIec = drive === 'close-coupled' && isIec;
  const isDriven = line !== 'single-phase' && line !== 'u-frame' && random.chance(0.2);
  if (isDriven) {
    plate.driveDuty = 'inverter';
    plate.constantTorqueRange = 10;
  }
  const supply = supplyOf(random, line, size, plate, isDriven, rule.loadKind === 'quadratic');
  if (onFace) train.coupling.input = isIec ? 'quill' : 'hub';
  if (train.coupling.input === 'quill') {
    train.coupling.quill = { depthMm: 150, bushing: random.chance(0.3) };
    delete train.coupling.hub;
  }
  const mounting: PumpSetInput['mounting'] = holding === 'face' || isPumpShaft ? 'face' : 'foot';
  const motor = plate.phases === null ? null : nextNumber(numbers);
  plant.sets.push({
    area: area.code,
    service,
    pump: rule.words,
    criticality: random.pick([1, 2, 2, 3] as const),
    motor,
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
