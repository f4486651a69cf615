import fc from 'fast-check';
import { expect, test } from 'vitest';
import { contextOf } from '@/lib/matching/context';
import { criteria } from '@/lib/matching/criteria';
import { defaultSettings } from '@/lib/matching/default-settings';
import type { Finding } from '@/lib/matching/finding';
import { anyMotor, anySet } from './any-case';

const RUNS = { seed: 20261126, numRuns: 400 } as const;
const LOAD = ['speed', 'power', 'torque', 'breakaway', 'duty', 'loading', 'temperature-altitude', 'efficiency-class'];

/** What is wrong with a finding's form; empty when nothing is. */
function faultsOf({ have, need, difference, grade, by, reading, work, says, cite }: Finding): string[] {
  const faults: string[] = [];
  for (const [name, value] of Object.entries({ have, need, difference, hours: work?.hours ?? null }))
    if (typeof value === 'number' && !Number.isFinite(value)) faults.push(`${name} is ${value}`);
  if (/NaN|Infinity|undefined|null/.test(`${says} ${reading} ${work?.what}`.replace(/ (null|undefined)/g, '')))
    faults.push(`says ${says}`);
  if (says.trim() === '' || cite.trim() === '') faults.push('says or cite is empty');
  if ((grade === 'check') !== (by !== null)) faults.push(`${grade} by ${by}`);
  if ((by === 'reading') !== (reading !== null)) faults.push(`by ${by}, reading ${reading}`);
  if (grade === 'work' && work === null) faults.push('no work');
  return faults;
}

test('any set and any motor get whole findings from every criterion of the load', () => {
  fc.assert(
    fc.property(anySet, anyMotor, (set, candidate) => {
      const context = contextOf(set, candidate, { settings: defaultSettings, asOf: null });
      for (const [id, ask] of criteria) {
        if (!LOAD.includes(id)) continue;
        const finding = ask(set, candidate, context);
        if (finding === null) continue;
        expect(finding.criterion).toBe(id);
        expect(faultsOf(finding)).toEqual([]);
      }
    }),
    RUNS,
  );
});

test('any operating point is whole, finite and nowhere negative, or says why there is none', () => {
  fc.assert(
    fc.property(anySet, anyMotor, (set, candidate) => {
      const { point } = contextOf(set, candidate, { settings: defaultSettings, asOf: null });
      const { flowChangePct, why, motorRpm, restored } = point;
      expect(why === null).toBe(motorRpm !== null);
      expect(why === null).toBe(flowChangePct !== null);
      for (const at of restored === null ? [point] : [point, restored]) {
        const { motorRpm, pumpRpm, pumpKw, motorKw, loadPct, torquePct, amps, hertz } = at;
        for (const value of [motorRpm, pumpRpm, pumpKw, motorKw, loadPct, torquePct, amps, hertz])
          if (value !== null) expect(Number.isFinite(value) && value >= 0).toBe(true);
      }
    }),
    RUNS,
  );
});
