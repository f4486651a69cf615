import type { MotorInput } from '@/lib/plant/motor';
import type { DemoMotor, DemoPlant, DemoSet } from './demo';

/** A small bottling plant beside the large one: whoever works at one sees nothing of the other. All of it is invented. */

const AREAS = [
  { code: 'BL', name: 'Blending', surroundings: { ip: 'IP55', washdown: true, ambientC: 30, classification: null } },
  { code: 'BO', name: 'Bottling hall', surroundings: { ip: 'IP55', ambientC: 35, classification: null } },
] as const;

const plate = (frame: string, kw: number, rpm: number, amps: number): Omit<MotorInput, 'id'> => ({
  kind: 'cage',
  frame,
  mounting: 'IM B3',
  phases: 3,
  poles: 4,
  leads: 6,
  winding: 'star-delta-6',
  ratings: [{ volts: 400, hertz: 50, kw, rpm, amps, connection: 'delta' }],
  enclosure: 'TEFC',
  ip: 'IP55',
  insulation: 'F',
  duty: 'S1',
});

const SIZES = {
  small: plate('90L', 1.5, 1445, 3.3),
  middle: plate('100L', 3, 1450, 6.1),
  large: plate('132S', 5.5, 1465, 10.7),
} as const;
type Size = keyof typeof SIZES;

const SETS: readonly [tag: string, area: 'BL' | 'BO', service: string, size: Size, pumpKw: number][] = [
  ['BT-11', 'BL', 'Sugar solution', 'middle', 2.1],
  ['BT-12', 'BL', 'Juice concentrate', 'large', 4],
  ['BT-13', 'BL', 'Blended drink', 'middle', 2.4],
  ['BT-21', 'BO', 'Rinse water', 'small', 1.1],
  ['BT-22', 'BO', 'Filler feed', 'middle', 2.2],
  ['BT-23', 'BO', 'Bottle washer', 'large', 4.2],
];

const number = (n: number) => `S-${String(n).padStart(3, '0')}`;

const sets: DemoSet[] = SETS.map(([tag, area, service, size, pumpKw], i) => ({
  area,
  service,
  pump: 'centrifugal pump',
  criticality: i % 3 === 0 ? 1 : 2,
  motor: number(i + 1),
  input: {
    tag,
    mounting: 'foot',
    shaftDirection: 'horizontal',
    rotation: 'either',
    coupling: { type: 'coupling', ratio: 1 },
    base: { shimLimitMm: 5, shimsPresentMm: 1 },
    supply: { phases: 3, volts: 400, hertz: 50, start: 'direct' },
    load: { kind: 'quadratic', shaftKw: pumpKw, atPumpRpm: SIZES[size].ratings?.[0]?.rpm ?? null, staticHeadPct: 30 },
  },
}));

const motor = (n: number, size: Size, place: DemoMotor['place']): DemoMotor => ({
  number: number(n),
  maker: n % 2 === 0 ? 'Quillmoor' : 'Brackenholm',
  serial: `SG${4_100 + n * 37}`,
  plate: SIZES[size],
  place,
});

const motors: DemoMotor[] = [
  ...SETS.map(([tag, , , size], i) => motor(i + 1, size, { set: tag })),
  motor(7, 'middle', { store: 'Workshop', shelf: 'Rack 1' }),
  motor(8, 'large', { store: 'Workshop', shelf: 'Rack 2' }),
];

export const saltgarth: DemoPlant = {
  site: 'Saltgarth Bottling',
  areas: AREAS,
  stores: [{ name: 'Workshop', shelves: ['Rack 1', 'Rack 2'] }],
  sets,
  motors,
};
