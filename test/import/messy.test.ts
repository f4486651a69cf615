import { describe, expect, test } from 'vitest';
import { type Draft, draftOf } from '@/lib/import/draft';
import { findColumns } from '@/lib/import/find-columns';
import { planner, type RowPlan } from '@/lib/import/plan';
import { type Key, messySheet } from './messy';
import { KINDS } from './messy-kinds';
import { AMERICAN, GERMAN } from './messy-truth';

const VERDICTS = ['right', 'refused as it should', 'wrongly accepted', 'wrongly refused'] as const;
type Verdict = (typeof VERDICTS)[number];

describe.each([
  ['an American sheet', AMERICAN, 20_261_127],
  ['a German sheet', GERMAN, 70_261_127],
] as const)('%s of 2 000 rows typed by many hands', (_, manner, seed) => {
  const { rows, keys } = messySheet(manner, seed);
  const found = findColumns('sets', rows.slice(0, 200), new Map());
  const plans = planner('sets');
  const judged = keys.map((key, i) => {
    const draft = draftOf('sets', rows[i + 3] as (typeof rows)[0], found.columns, { decimal: manner.decimal });
    const plan = plans.plan(draft, null);
    return { key, draft, plan, ...judge(key, draft, plan) };
  });
  const told = (verdict: Verdict) =>
    judged
      .filter((one) => one.verdict === verdict)
      .map(
        ({ key, why, plan }) =>
          `${key.line} ${key.kind}: ${why} ${plan.problems.map(({ field, says }) => `${field} ${says}`).join('; ')}`,
      );

  test('every column is told, below the title', () => {
    expect(found.headingLines).toEqual([3]);
    expect(found.columns.filter(({ heading, field }) => heading !== '' && field === null)).toEqual([]);
  });

  test('it has forty kinds of mess or more, each many times', () => {
    expect(Object.keys(KINDS).length).toBeGreaterThanOrEqual(40);
    for (const kind of Object.keys(KINDS)) expect(keys.filter((key) => key.kind === kind).length).toBeGreaterThan(10);
    expect(keys).toHaveLength(2_000);
  });

  test('no row is silently wrong', () => {
    expect(told('wrongly accepted')).toEqual([]);
  });

  test('no row is refused that says one thing only', () => {
    expect(told('wrongly refused')).toEqual([]);
  });

  test('what became of each kind', () => {
    const table = Object.keys(KINDS).map((kind) => {
      const own = judged.filter(({ key }) => key.kind === kind);
      return [kind, ...VERDICTS.map((verdict) => own.filter((one) => one.verdict === verdict).length)];
    });
    console.info([['kind', ...VERDICTS], ...table].map((row) => row.join(' | ')).join('\n'));
    const counted = table.flatMap(([, ...counts]) => counts).reduce<number>((sum, count) => sum + Number(count), 0);
    expect(counted).toBe(2_000);
  });
});

function judge({ must, leaves }: Key, draft: Draft, plan: RowPlan): { verdict: Verdict; why: string } {
  const isRefused = plan.outcome === 'refused';
  switch (must.be) {
    case 'passed over':
      if (draft.skip !== null) return { verdict: 'right', why: '' };
      return { verdict: isRefused ? 'wrongly refused' : 'wrongly accepted', why: 'is no row of data' };
    case 'refused': {
      if (!isRefused) return { verdict: 'wrongly accepted', why: 'had to be refused' };
      const isThere = plan.problems.some(({ field }) => field === must.field);
      return isThere
        ? { verdict: 'refused as it should', why: '' }
        : { verdict: 'wrongly refused', why: `not for ${must.field}` };
    }
    case 'the same':
      if (plan.outcome === 'same' && plan.changes.length === 0 && draft.skip === null)
        return { verdict: 'right', why: '' };
      return { verdict: isRefused ? 'wrongly refused' : 'wrongly accepted', why: 'says what an earlier row said' };
    case 'right': {
      if (isRefused || draft.skip !== null) return { verdict: 'wrongly refused', why: draft.skip ?? '' };
      const wrong = differences(leavesOfDraft(draft), leaves);
      return wrong === '' ? { verdict: 'right', why: '' } : { verdict: 'wrongly accepted', why: wrong };
    }
  }
}

/** Each value of a draft at its place, found by walking it. */
function leavesOfDraft({ set, motor }: Draft): Record<string, unknown> {
  const leaves: Record<string, unknown> = {};
  const walk = (at: unknown, path: string[]) => {
    if (typeof at === 'object' && at !== null)
      for (const [key, value] of Object.entries(at)) walk(value, [...path, key]);
    else leaves[path.join('.').replace(/^(set|motor)\.\1\./, '$1.')] = at;
  };
  walk(set, ['set']);
  walk(motor, ['motor']);
  return leaves;
}

function differences(have: Record<string, unknown>, must: Record<string, unknown>): string {
  const isSame = (a: unknown, b: unknown) =>
    typeof a === 'number' && typeof b === 'number' ? Math.abs(a - b) <= 0.005 && Math.abs(a / b - 1) < 0.001 : a === b;
  return [...new Set([...Object.keys(have), ...Object.keys(must)])]
    .filter((path) => !isSame(have[path], must[path]))
    .map((path) => `${path} is ${JSON.stringify(have[path])}, must be ${JSON.stringify(must[path])}`)
    .join('; ');
}
