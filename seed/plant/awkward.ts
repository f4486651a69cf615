import { awkwardMotors } from './awkward-motors';
import type { DemoMotor, DemoSet } from './demo';

/** The awkward sets with their motors and spares; ages on the shelf are counted from `today`. */
export function awkward(today: string): { sets: readonly DemoSet[]; motors: readonly DemoMotor[] } {
  return { sets: SETS, motors: awkwardMotors(today) };
}

const starter = (amps: number) => ({
  phases: 3 as const,
  volts: 480,
  hertz: 60,
  start: 'direct' as const,
  overloadMinA: Math.round(amps * 8) / 10,
  overloadMaxA: Math.round(amps * 12.5) / 10,
  overloadIn: 'line' as const,
  contactorA: amps < 10 ? 12 : amps < 20 ? 25 : 40,
  cableA: amps < 10 ? 20 : amps < 20 ? 28 : 50,
});
const feet = { shimLimitMm: 6, shimsPresentMm: 1.5, slotting: false, transitionBase: true } as const;
const gearHub = { type: 'gear', input: 'hub', efficiencyPct: 95, gapMm: 4, gapMinMm: 2, gapMaxMm: 6 } as const;

/** What a plant meets sooner or later, each once: the sets that no rule of plant.ts makes. */
const SETS: readonly DemoSet[] = [
  {
    area: 'OH',
    service: 'Liquor transfer', // a 254U of the 1952 series: only T frames are on the shelf
    pump: 'external gear pump',
    criticality: 1,
    motor: 'M-0501',
    input: {
      tag: 'OH-201',
      mounting: 'foot',
      shaftDirection: 'horizontal',
      rotation: 'either',
      coupling: { ...gearHub, ratio: 4.5, hub: { boreMm: 34.925, bushed: false, replaceable: true, lengthMm: 76 } },
      base: { ...feet, slotting: true, cableEntry: 'left' },
      supply: starter(10.5),
      load: {
        kind: 'constant-torque',
        shaftKw: 3.6,
        atPumpRpm: 390,
        maxPumpRpm: 450,
        flowTolerancePct: 5,
        breakawayPct: 120,
      },
    },
  },
  {
    area: 'SK',
    service: 'Hot syrup circulation', // a Z shaft: the frame tells its feet, the tape its shaft
    pump: 'rotary lobe pump',
    criticality: 1,
    motor: 'M-0502',
    input: {
      tag: 'SK-201',
      mounting: 'foot',
      shaftDirection: 'horizontal',
      rotation: 'cw',
      coupling: {
        ...gearHub,
        ratio: 5,
        hub: { boreMm: 34.925, keyWidthMm: 7.9375, bushed: false, replaceable: true, lengthMm: 110 },
      },
      base: { ...feet, cableEntry: 'left' },
      supply: starter(13),
      load: {
        kind: 'constant-torque',
        shaftKw: 5.1,
        atPumpRpm: 353,
        maxPumpRpm: 420,
        flowTolerancePct: 5,
        breakawayPct: 130,
      },
    },
  },
  {
    area: 'SL',
    service: 'Cooker hot water', // star-delta, the overload in the phase
    pump: 'centrifugal pump',
    criticality: 2,
    motor: 'M-0503',
    input: {
      tag: 'SL-201',
      mounting: 'foot',
      shaftDirection: 'horizontal',
      rotation: 'either',
      coupling: {
        type: 'coupling',
        input: 'hub',
        ratio: 1,
        gapMm: 4,
        gapMinMm: 2,
        gapMaxMm: 6,
        hub: { replaceable: true },
      },
      base: { ...feet, cableEntry: 'top' },
      supply: {
        ...starter(18),
        start: 'star-delta',
        directAllowed: false,
        overloadIn: 'phase',
        overloadMinA: 8,
        overloadMaxA: 13,
      },
      load: {
        kind: 'quadratic',
        shaftKw: 8.2,
        atPumpRpm: 1770,
        maxPumpRpm: 2200,
        flowTolerancePct: 4,
        breakawayPct: 20,
        staticHeadPct: 35,
      },
      needs: ['thermistor'],
    },
  },
  {
    area: 'SL',
    service: 'Basil oil dosing', // a gear with a quill that takes 62 mm of shaft
    pump: 'external gear pump',
    criticality: 2,
    motor: 'M-0504',
    input: {
      tag: 'SL-202',
      mounting: 'face',
      shaftDirection: 'horizontal',
      rotation: 'either',
      seat: { face: 'FF215' },
      coupling: {
        type: 'gear',
        input: 'quill',
        ratio: 6,
        efficiencyPct: 95,
        quill: { depthMm: 62, bushing: false },
        maxTorqueNm: 30,
      },
      base: { cableEntry: 'top' },
      supply: starter(4.2),
      load: {
        kind: 'constant-torque',
        shaftKw: 1.5,
        atPumpRpm: 292,
        maxPumpRpm: 350,
        flowTolerancePct: 5,
        breakawayPct: 130,
      },
    },
  },
  {
    area: 'BG',
    service: 'Icing sugar binder', // an imported bagger in a dust zone by the other scheme
    pump: 'sliding vane pump',
    criticality: 2,
    motor: 'M-0505',
    input: {
      tag: 'BG-201',
      mounting: 'foot',
      shaftDirection: 'horizontal',
      rotation: 'either',
      coupling: { ...gearHub, ratio: 3.5, hub: { replaceable: true } },
      base: { ...feet, cableEntry: 'top' },
      supply: starter(9.5),
      load: {
        kind: 'constant-torque',
        shaftKw: 3.9,
        atPumpRpm: 504,
        maxPumpRpm: 640,
        flowTolerancePct: 5,
        breakawayPct: 125,
      },
      surroundings: { classification: { scheme: 'IEC', zone: 22, group: 'IIIB', tempC: 125 } },
    },
  },
  {
    area: 'OR',
    service: 'Slop oil return', // the plate is gone; the seat was measured with a tape
    pump: 'external gear pump',
    criticality: 3,
    motor: null,
    input: {
      tag: 'OR-201',
      mounting: 'foot',
      shaftDirection: 'horizontal',
      rotation: 'cw',
      seat: { shaftHeightMm: 133.5, holesAcrossMm: 216, holesAlongMm: 178, boltMm: 10, holeToShaftEndMm: 174.5 },
      coupling: {
        ...gearHub,
        ratio: 4,
        hub: { boreMm: 34.9, keyWidthMm: 7.9, bushed: false, replaceable: true, lengthMm: 80 },
      },
      base: { ...feet, cableEntry: 'left' },
      supply: starter(13),
      load: {
        kind: 'constant-torque',
        shaftKw: 5,
        atPumpRpm: 440,
        maxPumpRpm: 520,
        flowTolerancePct: 5,
        breakawayPct: 120,
      },
    },
  },
  {
    area: 'EF',
    service: 'Wet well', // hangs shaft down on the pump's column
    pump: 'vertical centrifugal pump',
    criticality: 2,
    motor: 'M-0506',
    input: {
      tag: 'EF-201',
      mounting: 'face',
      shaftDirection: 'down',
      rotation: 'cw',
      seat: { face: 'FF215' },
      coupling: {
        type: 'coupling',
        input: 'hub',
        ratio: 1,
        hub: { boreMm: 28, keyWidthMm: 8, replaceable: false, lengthMm: 55 },
      },
      base: { cableEntry: 'top' },
      supply: starter(5.3),
      load: {
        kind: 'quadratic',
        shaftKw: 2.3,
        atPumpRpm: 1750,
        maxPumpRpm: 2000,
        flowTolerancePct: 5,
        breakawayPct: 25,
        staticHeadPct: 60,
      },
    },
  },
  {
    area: 'CP',
    service: 'Final rinse', // close-coupled: only the same pump shaft goes in
    pump: 'close-coupled centrifugal pump',
    criticality: 2,
    motor: 'M-0507',
    input: {
      tag: 'CP-201',
      mounting: 'face',
      shaftDirection: 'horizontal',
      rotation: 'either',
      coupling: { type: 'close-coupled', input: 'pump-shaft', ratio: 1 },
      base: { cableEntry: 'left' },
      supply: starter(6),
      load: {
        kind: 'quadratic',
        shaftKw: 2.9,
        atPumpRpm: 3500,
        maxPumpRpm: 3600,
        flowTolerancePct: 5,
        breakawayPct: 20,
        staticHeadPct: 30,
      },
    },
  },
  {
    area: 'RF',
    service: 'Oil return', // belt, on a drive, far from the cabinet
    pump: 'external gear pump',
    criticality: 3,
    motor: 'M-0508',
    input: {
      tag: 'RF-201',
      mounting: 'foot',
      shaftDirection: 'horizontal',
      rotation: 'either',
      coupling: {
        type: 'belt',
        input: 'hub',
        ratio: 3.5,
        takeUpMm: 35,
        sheave: { pitchDiameterMm: 160, changeable: true },
        hub: { bushed: true, replaceable: true },
      },
      base: { ...feet, cableEntry: 'left' },
      supply: {
        phases: 3,
        volts: 480,
        hertz: 60,
        start: 'drive',
        drive: {
          ratedA: 8,
          overloadPct: 150,
          outputVolts: 460,
          baseHertz: 60,
          minHertz: 15,
          maxHertz: 75, // faster than its pump may turn: for the page of doubts
          cableM: 85,
          filter: false,
        },
      },
      load: {
        kind: 'constant-torque',
        shaftKw: 2.2,
        atPumpRpm: 500,
        maxPumpRpm: 560,
        flowTolerancePct: 5,
        breakawayPct: 120,
      },
    },
  },
];
