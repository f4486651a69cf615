import type { MotorInput } from '@/lib/plant/motor';
import { AREAS } from './areas';
import { IEC, MAKERS, NEMA, nemaPlate, type Size, serialOf, U_FRAME } from './catalogue';
import type { DemoMotor } from './demo';
import { type Holding, plateOf } from './plates';
import { dice } from './random';
import { monthsBefore } from './spares';

type Plate = Omit<MotorInput, 'id'>;

/** The motors of the awkward sets, and the spares that make a store awkward. */
export function awkwardMotors(today: string): readonly DemoMotor[] {
  const random = dice(11);
  const made: DemoMotor[] = [];
  const add = (
    number: string,
    place: DemoMotor['place'],
    of: Size,
    code: string,
    holding: Holding,
    more: Plate = {},
    twin: DemoMotor | null = null,
  ) => {
    const area = AREAS.find((one) => one.code === code);
    if (!area) throw new Error(`no area ${code}`);
    const maker = random.pick(MAKERS);
    const plate = { ...plateOf(area.line, of, holding, area, random), ...more };
    const serial = serialOf(maker, random);
    made.push({ number, maker: twin?.maker ?? maker, serial: twin?.serial ?? serial, plate, place });
  };
  const shelf = (name: string) => ({ store: 'Main store', shelf: name });
  const shelved = (months: number, tested: number | null, insulationMohm: number | null): Plate => ({
    spare: {
      shelvedOn: monthsBefore(today, months),
      testedOn: tested === null ? null : monthsBefore(today, tested),
      insulationMohm,
    },
  });
  // A shaft made to order: what the frame says of it does not hold, so it was measured.
  const longShaft = { shaftDiameterMm: 34.925, shaftLengthMm: 120, keyWidthMm: 7.9375 };
  const jm = { frame: '184JM', mounting: 'IM B14' };

  add('M-0501', { set: 'OH-201' }, sizeOf(U_FRAME, '254U', 4), 'OH', 'foot');
  add('M-0502', { set: 'SK-201' }, sizeOf(NEMA, '215T', 4), 'SK', 'foot', { frame: '215TZ', measured: longShaft });
  add('M-0503', { set: 'SL-201' }, sizeOf(IEC, '160M', 4), 'SL', 'foot');
  add('M-0504', { set: 'SL-202' }, sizeOf(IEC, '100L', 4), 'SL', 'face');
  add('M-0505', { set: 'BG-201' }, sizeOf(IEC, '132S', 4), 'SL', 'foot', {
    ip: 'IP65',
    classification: { scheme: 'IEC', zone: 22, group: 'IIIB', tempC: 125 },
  });
  add('M-0506', { set: 'EF-201' }, sizeOf(IEC, '100L', 4, 3), 'EF', 'face', { mounting: 'IM V1' });
  add('M-0507', { set: 'CP-201' }, sizeOf(NEMA, '184T', 2), 'CP', 'face', jm);
  add('M-0508', { set: 'RF-201' }, sizeOf(NEMA, '184T', 4), 'RF', 'foot', {
    driveDuty: 'inverter',
    constantTorqueRange: 10,
  });

  add('M-0511', 'at-repair', sizeOf(NEMA, '215T', 4), 'SK', 'foot');
  add('M-0512', shelf('A2'), sizeOf(NEMA, '184T', 4), 'OR', 'foot', shelved(4, 1, 0.4)); // a wet winding
  add('M-0513', shelf('B1'), sizeOf(NEMA, '213T', 4), 'OR', 'foot', shelved(41, null, null)); // forgotten at the back
  add('M-0514', shelf('B2'), sizeOf(NEMA, '182T', 4), 'RF', 'foot', {
    ...shelved(9, 3, 900),
    frame: '182TZ',
    measured: { shaftDiameterMm: 25.4, shaftLengthMm: 95, keyWidthMm: 6.35 },
  });
  add('M-0515', shelf('B2'), sizeOf(NEMA, '184T', 2), 'CP', 'face', { ...shelved(7, 2, 1200), ...jm });
  add('M-0516', shelf('B2'), sizeOf(NEMA, '184T', 2), 'CP', 'face', { ...shelved(16, 2, 640), ...jm });
  add('M-0517', shelf('A4'), sizeOf(IEC, '100L', 4), 'SL', 'face', shelved(5, 5, 1500));
  add('M-0518', shelf('B4'), sizeOf(NEMA, '213T', 4), 'OR', 'foot', shelved(6, 1, 1100)); // the 254U's likeliest heir

  add('M-0091', 'scrapped', sizeOf(U_FRAME, '254U', 4), 'OH', 'foot');
  add('M-0092', 'scrapped', sizeOf(IEC, '160M', 4), 'SL', 'foot');

  // Plates typed in a hurry, for the page of doubts: 1850 for 1750, the amps of the other voltage, a serial number twice.
  const [first, second] = nemaPlate(sizeOf(NEMA, '184T', 4)).ratings ?? [];
  add('M-0521', 'at-repair', sizeOf(NEMA, '184T', 4), 'OR', 'foot', {
    ratings: [
      { ...first, rpm: 1850 },
      { ...second, rpm: 1850 },
    ],
  });
  add('M-0522', 'at-repair', sizeOf(NEMA, '184T', 4), 'RF', 'foot', {
    ratings: [{ ...first }, { ...second, amps: first?.amps ?? null }],
  });
  add('M-0523', 'at-repair', sizeOf(U_FRAME, '254U', 4), 'OH', 'foot', {}, made[0]);
  return made;
}

function sizeOf(sizes: readonly Size[], frame: string, poles: number, power: number | null = null): Size {
  const found = sizes.find((one) => one.frame === frame && one.poles === poles && (power ?? one.power) === one.power);
  if (!found) throw new Error(`the catalogue has no ${frame} with ${poles} poles`);
  return found;
}
