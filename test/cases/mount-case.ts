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

// Inches of NEMA MG 1-2016 4.4.1 (feet, shafts), 4.4.4 (C faces) and the superseded 1952 series, times 25.4:
// 182T and 184T: D 4.5 = 114.3; 2E 7.5 = 190.5; 2F 4.5 = 114.3 and 5.5 = 139.7; H 0.41; BA 2.75 + N-W 2.75 = 139.7;
// U 1.125 = 28.575; S 0.25 = 6.35. The base case is a 184T for a 184T, hub 60 mm, 1.5 mm of shims, limit 6.
export const SHAFT = {
  'shaft-diameter': ['ok', 28.575, 28.575],
  'shaft-length': ['ok', 69.85, 60],
  key: ['ok', 6.35, 6.35],
} as const;
/** The whole answer of a 184T in place of a 184T. */
export const TWIN = {
  mounting: ['ok', 'foot', 'foot'],
  'shaft-height': ['ok', 114.3, 114.3],
  'foot-holes': ['ok', '190.5 × 139.7', '190.5 × 139.7'],
  'shaft-position': ['ok', 139.7, 139.7],
  ...SHAFT,
} as const;
