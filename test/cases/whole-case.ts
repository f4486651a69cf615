import { expect } from 'vitest';
import { type Assessment, assess, type Result } from '@/lib/matching/assess';
import { defaultSettings } from '@/lib/matching/default-settings';
import type { CriterionId, Finding } from '@/lib/matching/finding';
import { assessCase } from '@/lib/plant/assess-case';

type Json = string | number | boolean | null | Json[] | { [key: string]: Json };
type Differs = { [key: string]: Json };

/** What differs from a base case: of the candidate, of the failed motor, of both, of the set. Groups are merged. */
export interface Changes {
  motor?: Differs;
  failed?: Differs | null;
  both?: Differs;
  set?: Differs;
}

/**
 * A 5 hp 4-pole motor, 460 V 60 Hz, 1750 rpm, 6.6 A, and a rotary pump of 3 kW at 1750 rpm on 460 V, direct on line.
 * The candidate is the failed motor's twin: a straight swap. Invented.
 */
export const nema: Base = {
  motor: {
    id: 'M-1',
    kind: 'cage',
    frame: '184T',
    phases: 3,
    poles: 4,
    leads: 9,
    ratings: [{ volts: 460, hertz: 60, hp: 5, rpm: 1750, amps: 6.6 }],
    serviceFactor: 1.15,
    design: 'B',
    codeLetter: 'J',
    enclosure: 'TEFC',
    ip: 'IP55',
    insulation: 'F',
    ambientC: 40,
    duty: 'S1',
    driveDuty: 'none',
    terminalBox: 'right',
    rotation: 'either',
    washdown: 'none',
    has: [],
    massKg: 41,
    lengthMm: 390,
  },
  set: {
    tag: 'P-1',
    mounting: 'foot',
    shaftDirection: 'horizontal',
    rotation: 'either',
    coupling: { type: 'coupling', ratio: 1, hub: { lengthMm: 60, replaceable: true } },
    base: { shimLimitMm: 6, shimsPresentMm: 1.5, slotting: false, transitionBase: false },
    supply: {
      phases: 3,
      volts: 460,
      hertz: 60,
      start: 'direct',
      overloadMinA: 5,
      overloadMaxA: 9,
      overloadIn: 'line',
      contactorA: 18,
      cableA: 20,
    },
    load: { kind: 'constant-torque', shaftKw: 3, atPumpRpm: 1750, flowTolerancePct: 5, breakawayPct: 110 },
    surroundings: { ip: 'IP55', washdown: false, ambientC: 40, altitudeM: 200, classification: null },
  },
};

/** The same on 400 V 50 Hz: 4 kW, 1445 rpm, 8.1 A, design N, six leads; the pump takes 3.2 kW at 1445 rpm. Invented. */
export const iec: Base = {
  motor: {
    ...nema.motor,
    frame: '112M',
    mounting: 'IM B3',
    leads: 6,
    ratings: [{ volts: 400, hertz: 50, kw: 4, rpm: 1445, amps: 8.1, connection: 'delta' }],
    serviceFactor: null,
    design: 'N',
    codeLetter: null,
  },
  set: {
    ...nema.set,
    supply: {
      phases: 3,
      volts: 400,
      hertz: 50,
      start: 'direct',
      overloadMinA: 6,
      overloadMaxA: 10,
      overloadIn: 'line',
      contactorA: 18,
      cableA: 20,
    },
    load: { kind: 'constant-torque', shaftKw: 3.2, atPumpRpm: 1445, flowTolerancePct: 5, breakawayPct: 110 },
  },
};

interface Base {
  motor: Differs;
  set: Differs;
}

export interface Judged extends Result {
  /** The finding of one criterion; null where it was not asked. */
  of: (criterion: CriterionId) => Finding | null;
}

/** The base case with what differs, read and judged as the contract's JSON would be. */
export function judged(base: Base, { motor = {}, failed = {}, both = {}, set = {} }: Changes = {}): Judged {
  const was = merged(base.motor, both);
  const asked: Json = {
    set: { ...merged(base.set, set), failed: failed === null ? null : { ...merged(was, failed), id: 'M-0' } },
    candidates: [merged(was, motor)],
  };
  const answer: Assessment = assess(assessCase.parse(asked), defaultSettings);
  const [result] = answer.results;
  if (result === undefined) throw new Error('no result');
  return { ...result, of: (criterion) => result.findings.find((one) => one.criterion === criterion) ?? null };
}

const isGroup = (value: Json | undefined): value is Differs =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

function merged(base: Differs, differs: Differs): Differs {
  const out: Differs = { ...base };
  for (const [key, value] of Object.entries(differs)) {
    const before = out[key];
    out[key] = isGroup(before) && isGroup(value) ? merged(before, value) : value;
  }
  return out;
}

/** Every finding that stands in the way, as `criterion grade`. */
export const standing = ({ findings }: Judged): string[] =>
  findings.flatMap(({ criterion, grade }) => (grade === 'ok' || grade === 'note' ? [] : [`${criterion} ${grade}`]));

/** A figure within what rounding to its last printed digit leaves. */
export const near = (value: number, digits = 3): number => expect.closeTo(value, digits);

/** What every finding must be, whatever it says. */
export function isWellFormed({ findings }: Judged): void {
  for (const { criterion, grade, have, need, difference, says, work, by, reading, cite } of findings) {
    const where = `${criterion}: ${says}`;
    expect(says.length, where).toBeGreaterThan(0);
    expect(cite.length, where).toBeGreaterThan(0);
    expect(by !== null, where).toBe(grade === 'check');
    expect(reading !== null, where).toBe(by === 'reading');
    if (reading !== null) expect(reading, where).toMatch(/\(\d+ min\)$/);
    if (grade === 'work') expect(work, where).not.toBeNull();
    if (work !== null) {
      expect(work.what.length, where).toBeGreaterThan(0);
      expect(work.hours, where).toBeGreaterThan(0);
    }
    if (typeof have === 'number' && typeof need === 'number') expect(difference, where).toBeCloseTo(have - need, 3);
    else expect(difference, where).toBeNull();
  }
}
