import { AREAS } from './areas';
import { MAKERS, serialOf } from './catalogue';
import { type DemoMotor, type DemoPlant, type Numbers, nextNumber } from './demo';
import { type Holding, plateOf, sizesOf } from './plates';
import type { Dice } from './random';

export const STORES = [
  { name: 'Main store', shelves: ['A1', 'A2', 'A3', 'A4', 'B1', 'B2', 'B3', 'B4'] },
  { name: 'Effluent hut', shelves: ['E1', 'E2'] },
] as const;

/** Nobody makes the 1952 series any more, so no spare of it is on a shelf. */
const BOUGHT_FOR = AREAS.filter(({ line }) => line !== 'u-frame');

/** Most spares are bought for a set that stands there; some are odd lots, some wait at repair or on order. */
export function addSpare(plant: DemoPlant, random: Dice, numbers: Numbers, today: string): void {
  const area = random.pick(BOUGHT_FOR);
  const size = random.pick(sizesOf(area.line));
  const holding: Holding =
    area.line === 'single-phase' ? 'foot' : random.pick(['foot', 'foot', 'foot-and-face', 'face'] as const);
  const plate = plateOf(area.line, size, holding, area, random);
  if (random.chance(0.15)) plate.driveDuty = 'inverter';
  if (random.chance(0.1)) plate.ip = null;
  const months = random.pick([2, 5, 9, 14, 20, 34, 58]);
  plate.spare = {
    shelvedOn: monthsBefore(today, months),
    testedOn: random.chance(0.6) ? monthsBefore(today, Math.min(months, 6)) : null,
    insulationMohm: random.chance(0.9) ? Math.round(random.between(50, 2000)) : null,
  };
  const store = random.chance(0.85) ? STORES[0] : STORES[1];
  const place: DemoMotor['place'] = random.chance(0.05)
    ? 'at-repair'
    : random.chance(0.04)
      ? 'on-order'
      : { store: store.name, shelf: random.pick<string>(store.shelves) };
  const maker = random.pick(MAKERS);
  plant.motors.push({ number: nextNumber(numbers), maker, serial: serialOf(maker, random), plate, place });
}

/** The twelfth of the month so many months before a day, as YYYY-MM-DD. */
export function monthsBefore(today: string, months: number): string {
  const [year, month] = today.split('-').map(Number);
  if (!year || !month) throw new Error(`not a day: ${today}`);
  return new Date(Date.UTC(year, month - 1 - months, 12)).toISOString().slice(0, 10);
}
