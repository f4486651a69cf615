import type { PumpSetInput } from '@/lib/plant/set';
import type { PumpKind } from './areas';
import type { Dice } from './random';

type Drive = 'gear' | 'coupling' | 'belt' | 'close-coupled';

/** How each kind of pump is driven and loaded in this plant. Shares and spans are invented. */
interface PumpRule {
  kind: PumpKind;
  words: string;
  loadKind: 'constant-torque' | 'quadratic';
  poles: readonly (2 | 4 | 6)[];
  drives: readonly Drive[];
  pumpRpm: readonly [number, number];
  breakawayPct: readonly [number, number];
  flowTolerancePct: number;
}

export const PUMP_RULES: Record<PumpKind, PumpRule> = {
  lobe: {
    kind: 'lobe',
    words: 'rotary lobe pump',
    loadKind: 'constant-torque',
    poles: [4, 4, 6],
    drives: ['gear', 'gear', 'belt'],
    pumpRpm: [180, 450],
    breakawayPct: [100, 130],
    flowTolerancePct: 5,
  },
  gear: {
    kind: 'gear',
    words: 'external gear pump',
    loadKind: 'constant-torque',
    poles: [4, 6],
    drives: ['coupling', 'gear', 'belt'],
    pumpRpm: [250, 640],
    breakawayPct: [110, 140],
    flowTolerancePct: 5,
  },
  vane: {
    kind: 'vane',
    words: 'sliding vane pump',
    loadKind: 'constant-torque',
    poles: [4, 6],
    drives: ['coupling', 'belt'],
    pumpRpm: [300, 640],
    breakawayPct: [110, 140],
    flowTolerancePct: 5,
  },
  'progressing-cavity': {
    kind: 'progressing-cavity',
    words: 'progressing cavity pump',
    loadKind: 'constant-torque',
    poles: [4],
    drives: ['gear', 'belt'],
    pumpRpm: [120, 320],
    breakawayPct: [130, 160],
    flowTolerancePct: 8,
  },
  centrifugal: {
    kind: 'centrifugal',
    words: 'centrifugal pump',
    loadKind: 'quadratic',
    poles: [2, 4],
    drives: ['coupling', 'coupling', 'close-coupled'],
    pumpRpm: [0, 0],
    breakawayPct: [20, 30],
    flowTolerancePct: 4,
  },
};

const round = (value: number, step: number) => Math.round(value / step) * step;

export interface Train {
  coupling: NonNullable<PumpSetInput['coupling']>;
  load: NonNullable<PumpSetInput['load']>;
}

/** How the pump is coupled and what it asks, for a motor of `kw` at `rpm` with `shaftLengthMm` of shaft. */
export function trainOf(random: Dice, rule: PumpRule, drive: Drive, kw: number, rpm: number): Train {
  const direct = drive === 'coupling' || drive === 'close-coupled';
  const pumpRpm = direct ? rpm : round(random.between(rule.pumpRpm[0], rule.pumpRpm[1]), 5);
  const ratio = direct ? 1 : Math.round((rpm / pumpRpm) * 1000) / 1000;
  const efficiencyPct = drive === 'gear' ? 95 : null;
  const through = drive === 'gear' ? 0.95 : drive === 'belt' ? 0.95 : 1;
  const shaftKw = round(kw * random.between(0.55, 0.88) * through, 0.05);
  const coupling: Train['coupling'] =
    drive === 'close-coupled'
      ? { type: 'close-coupled', input: 'pump-shaft', ratio: 1 }
      : drive === 'belt'
        ? {
            type: 'belt',
            input: 'hub',
            ratio,
            takeUpMm: 40,
            sheave: { pitchDiameterMm: round(random.between(150, 240), 5), changeable: true },
            hub: { bushed: true, replaceable: true },
          }
        : {
            type: drive,
            input: 'hub',
            ratio,
            efficiencyPct,
            gapMm: 4,
            gapMinMm: 2,
            gapMaxMm: 6,
            hub: { replaceable: true, bushed: random.chance(0.4), sleeve: random.chance(0.3) },
          };
  return {
    coupling,
    load: {
      kind: rule.loadKind,
      shaftKw: Math.max(shaftKw, 0.1),
      atPumpRpm: round(rpm / ratio, 1),
      maxPumpRpm: round((rpm / ratio) * (direct ? 1.25 : 1.5), 10),
      flowTolerancePct: rule.flowTolerancePct,
      breakawayPct: round(random.between(rule.breakawayPct[0], rule.breakawayPct[1]), 5),
      staticHeadPct: rule.loadKind === 'quadratic' ? round(random.between(20, 60), 5) : null,
    },
  };
}
