import { expect } from 'vitest';
import type { CriterionId } from '@/lib/matching/finding';
import { isWellFormed, type Judged } from './whole-case';

const MOUNT = [
  'mounting',
  'shaft-height',
  'foot-holes',
  'shaft-position',
  'shaft-diameter',
  'shaft-length',
  'key',
  'face',
  'terminal-box',
  'envelope',
  'lift',
] as const satisfies CriterionId[];
type Mount = (typeof MOUNT)[number];

/** Grade, have, need, then what it asks for: a work id, `reading` or `person`; nothing asked for is left out. */
type Answer = readonly [string, Value, Value, string?];
type Value = number | string | null;

/** Lengths are printed to 0.01 in or whole mm and compared to this. */
const TO_MM = 0.05;

/**
 * The whole answer of the mount: every question asked, and none beside. The difference follows from have and need; the
 * unit from the question; the hours are the base of 2 and each distinct work once.
 */
export function expectMount(found: Judged, expected: Partial<Record<Mount, Answer>>): void {
  isWellFormed(found);
  const asked = MOUNT.filter((criterion) => found.of(criterion) !== null);
  expect(asked.toSorted()).toEqual(Object.keys(expected).toSorted());
  for (const [criterion, [grade, have, need, asks]] of Object.entries(expected)) {
    const finding = found.of(criterion as Mount);
    const { says, reading } = finding ?? {};
    const where = `${criterion}: ${says} ${reading ?? ''}`;
    const got = finding && [finding.grade, finding.have, finding.need, finding.work?.id ?? finding.by ?? undefined];
    expect(got, where).toEqual([grade, about(have), about(need), asks]);
    if (typeof have === 'number' && typeof need === 'number') {
      expect(Math.abs((finding?.difference ?? Number.NaN) - (have - need)), where).toBeLessThanOrEqual(TO_MM * 2);
      expect(finding?.unit, where).toBe(criterion === 'lift' ? 'kg' : 'mm');
    }
  }
  const hours = new Map(found.findings.flatMap(({ work }) => (work === null ? [] : [[work.id, work.hours] as const])));
  expect(found.hours).toBeCloseTo(
    [...hours.values()].reduce((sum, each) => sum + each, 2),
    3,
  );
}

const about = (value: Value) => (typeof value === 'number' ? expect.toSatisfy((mm) => isNear(mm, value)) : value);
const isNear = (mm: unknown, value: number) => typeof mm === 'number' && Math.abs(mm - value) <= TO_MM;
