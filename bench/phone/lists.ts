import type { BrowserContext } from '@playwright/test';
import { painted, SLOWER, slowPage, touched } from './device';
import { tellShifts } from './shifts';
import { tell } from './table';

const LIST = '.rank li';
const MOST_MS = 100;

interface Took {
  ms: number;
  workerMs: number;
}
const slowed = ({ ms, workerMs }: Took) => ms + (SLOWER - 1) * workerMs;
const inOrder = (all: readonly Took[]) => [...all].sort((a, b) => slowed(a) - slowed(b));

/** From the found set to the list, for many sets; then on to the record. */
export async function lists(phone: BrowserContext, tags: readonly string[]) {
  const [first = '', ...rest] = tags;
  const page = await slowPage(phone);
  await page.addInitScript((one) => window.bench.waitFor(one, ''), LIST);
  await page.goto(`/pump/sets/${encodeURIComponent(first)}/candidates`, { waitUntil: 'commit' });
  const cold = await painted(page);
  const asks = await page.evaluate(() => window.bench.asks);
  const waited = Math.max(...asks.filter(({ name }) => name === 'ranked').map((ask) => ask.workerMs));
  tell(
    'A list after a cold start of the app',
    (cold + (SLOWER - 1) * waited) / 1e3,
    's',
    null,
    'start, snapshot, list',
  );

  const [sets, found]: [Took[], Took[]] = [[], []];
  for (const tag of rest) {
    await page.locator('.tool[href="/pump"]').tap();
    await page.locator('#q').fill(tag);
    const line = `.lines .line-name a >> text="${tag}"`;
    await page.locator(line).first().waitFor();
    sets.push(await touched(page, line, '.action', 'What can go in?'));
    found.push(await touched(page, '.action:has-text("What can go in?")', LIST));
  }
  for (const [what, took] of [
    ['From the found set to the set', sets],
    ['From “What can go in?” to the list', found],
  ] as const) {
    const ordered = inOrder(took);
    const [median, worst] = [ordered[ordered.length >> 1], ordered.at(-1)];
    if (median === undefined || worst === undefined) throw new Error('no list');
    const note = (one: Took) => `page ${(one.ms - one.workerMs).toFixed(0)} ms, worker ${one.workerMs.toFixed(0)} ms`;
    tell(`${what}, median of ${took.length}`, slowed(median), 'ms', MOST_MS, note(median));
    tell(`${what}, worst`, slowed(worst), 'ms', null, note(worst));
  }

  const candidate = await touched(page, `${LIST} a`, '.action', '');
  tell('From the list to a candidate', slowed(candidate), 'ms', null);
  const job = await touched(page, 'a:has-text("Job sheet")', 'main h2', 'Leads for this supply');
  tell('From the candidate to the job sheet', slowed(job), 'ms', null);
  await page.goBack();
  const swap = await touched(page, '.action:has-text("Record the swap")', 'form', '');
  tell('From the candidate to the record', slowed(swap), 'ms', null);
  await page.waitForTimeout(1_000);
  await tellShifts(page, 'Layout shift: find, set, list, candidate, job sheet, record');
  await page.close();
}
