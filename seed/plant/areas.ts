import type { PumpSetInput } from '@/lib/plant/set';

type Surroundings = NonNullable<PumpSetInput['surroundings']>;
export type PumpKind = 'lobe' | 'gear' | 'vane' | 'progressing-cavity' | 'centrifugal';
export type Line = 'nema' | 'iec-60' | 'skid-50' | 'u-frame' | 'single-phase';

export interface DemoArea {
  code: string;
  name: string;
  surroundings: Surroundings;
  /** Which plates its machines carry, and why. */
  line: Line;
  because: string;
  pumps: readonly { service: string; kind: PumpKind; count: number }[];
}

const ordinary: Surroundings = { ip: 'IP55', washdown: false, ambientC: 40, altitudeM: 180, classification: null };

/** Harrowmere Works: an invented plant that cooks, fills and bags. */
export const AREAS: readonly DemoArea[] = [
  {
    code: 'SK',
    name: 'Syrup kitchen',
    surroundings: { ...ordinary, washdown: true, ip: 'IP66' },
    line: 'nema',
    because: 'built with the plant, on local NEMA motors for wet rooms',
    pumps: [
      { service: 'Liquid sugar transfer', kind: 'lobe', count: 4 },
      { service: 'Glucose unloading', kind: 'gear', count: 4 },
      { service: 'Invert syrup circulation', kind: 'vane', count: 4 },
      { service: 'Caramel dosing', kind: 'progressing-cavity', count: 3 },
    ],
  },
  {
    code: 'SL',
    name: 'Sauce line',
    surroundings: { ...ordinary, washdown: true, ip: 'IP66' },
    line: 'iec-60',
    because: 'bought whole from overseas: IEC motors with plates for 60 Hz',
    pumps: [
      { service: 'Tomato base feed', kind: 'lobe', count: 4 },
      { service: 'Starch slurry dosing', kind: 'progressing-cavity', count: 4 },
      { service: 'Vinegar make-up', kind: 'centrifugal', count: 3 },
      { service: 'Filler hopper feed', kind: 'lobe', count: 4 },
    ],
  },
  {
    code: 'OR',
    name: 'Oil receipt',
    surroundings: { ...ordinary, ambientC: 45 },
    line: 'nema',
    because: 'tank farm of the first build, open to the weather',
    pumps: [
      { service: 'Palm oil unloading', kind: 'gear', count: 4 },
      { service: 'Rapeseed oil transfer', kind: 'gear', count: 4 },
      { service: 'Fryer oil top-up', kind: 'vane', count: 4 },
      { service: 'Oil polishing loop', kind: 'gear', count: 3 },
    ],
  },
  {
    code: 'CP',
    name: 'Clean-in-place',
    surroundings: { ...ordinary },
    line: 'nema',
    because: 'local skids, centrifugal for supply and return',
    pumps: [
      { service: 'Caustic supply', kind: 'centrifugal', count: 5 },
      { service: 'Acid supply', kind: 'centrifugal', count: 4 },
      { service: 'Return', kind: 'centrifugal', count: 5 },
    ],
  },
  {
    code: 'BG',
    name: 'Bagging',
    surroundings: {
      ...ordinary,
      ip: 'IP65',
      classification: { scheme: 'NEC', class: 2, division: 2, groups: ['G'], tempCode: 'T3C' },
    },
    line: 'nema',
    because: 'sugar dust: motors marked for Class II Division 2',
    pumps: [
      { service: 'Binder spray', kind: 'gear', count: 3 },
      { service: 'Anti-caking oil dosing', kind: 'vane', count: 3 },
      { service: 'Wet scrubber circulation', kind: 'centrifugal', count: 2 },
    ],
  },
  {
    code: 'RF',
    name: 'Refrigeration',
    surroundings: { ...ordinary, ambientC: 35 },
    line: 'nema',
    because: 'plant room of the first build',
    pumps: [
      { service: 'Glycol circulation', kind: 'centrifugal', count: 5 },
      { service: 'Compressor oil circulation', kind: 'gear', count: 4 },
      { service: 'Condenser water', kind: 'centrifugal', count: 3 },
    ],
  },
  {
    code: 'OH',
    name: 'Old boiling hall',
    surroundings: { ...ordinary, ambientC: 45, ip: 'IP44' },
    line: 'u-frame',
    because: 'the oldest hall still runs on motors of the 1952 series',
    pumps: [
      { service: 'Molasses transfer', kind: 'gear', count: 6 },
      { service: 'Massecuite return', kind: 'lobe', count: 3 },
    ],
  },
  {
    code: 'FS',
    name: 'Fruit preparation skid',
    surroundings: { ...ordinary, washdown: true, ip: 'IP66' },
    line: 'skid-50',
    because: 'a 50 Hz skid behind its own frequency changer',
    pumps: [
      { service: 'Fruit puree feed', kind: 'progressing-cavity', count: 3 },
      { service: 'Pectin dosing', kind: 'lobe', count: 3 },
      { service: 'Skid cleaning supply', kind: 'centrifugal', count: 2 },
    ],
  },
  {
    code: 'EF',
    name: 'Effluent',
    surroundings: { ...ordinary },
    line: 'iec-60',
    because: 'package plant from overseas',
    pumps: [
      { service: 'Sludge transfer', kind: 'progressing-cavity', count: 5 },
      { service: 'Balance tank feed', kind: 'progressing-cavity', count: 4 },
      { service: 'Polymer dosing', kind: 'gear', count: 2 },
    ],
  },
  {
    code: 'LB',
    name: 'Pilot kitchen',
    surroundings: { ...ordinary, ip: 'IP44' },
    line: 'single-phase',
    because: 'a converted office: only single-phase supply',
    pumps: [
      { service: 'Pilot batch transfer', kind: 'lobe', count: 2 },
      { service: 'Flavour dosing', kind: 'gear', count: 2 },
    ],
  },
];
