import { stringify } from 'csv-stringify/sync';
import { expect, test } from 'vitest';
import { db } from '@/lib/db/client';
import { applyImport } from '@/lib/register/commands/steer-import';
import { messySheet } from '../import/messy';
import { AMERICAN, GERMAN } from '../import/messy-truth';
import { checkedFile, countsOf, outcomes, work } from './import';
import { someone } from './plant';

/** The sheets of `test/import` as files of text: rows that only a workbook can spoil are left out. */
function fileOf(manner: typeof AMERICAN | typeof GERMAN, seed: number, delimiter: string): string {
  const rows = messySheet(manner, seed).rows.filter(({ types }) => types === undefined);
  return stringify(
    rows.map(({ cells }) => cells),
    { delimiter, quoted_match: /^\s|\s$/ },
  );
}

test.each([
  ['American', AMERICAN, 20_261_127, ','],
  ['German', GERMAN, 70_261_127, ';'],
] as const)(
  'the messy %s sheet goes into the register as its dry run says, and the same sheet again says “same”',
  async (_name, manner, seed, delimiter) => {
    const actor = await someone();
    const text = fileOf(manner, seed, delimiter);
    const runId = await checkedFile(actor, 'sets', text);
    const dry = await countsOf(actor, runId);
    expect(dry.new).toBeGreaterThan(800);
    expect(dry.refused).toBeGreaterThan(200);
    await applyImport(actor, runId);
    await work(actor, runId);
    // Nothing that the dry run took is refused by the register.
    expect(await countsOf(actor, runId)).toEqual({ ...dry, applied: dry.new });
    expect(await db.pumpSet.count({ where: { siteId: actor.siteId } })).toBe(dry.new);
    const before = await outcomes(actor, runId);
    const again = await outcomes(actor, await checkedFile(actor, 'sets', text));
    const others = again.filter(([, outcome], i) => before[i]?.[1] === 'applied' && outcome !== 'same');
    expect(others).toEqual([]);
  },
  120_000,
);
