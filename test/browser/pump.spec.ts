import { type BrowserContext, test as base, expect, type Page } from '@playwright/test';
import { type Network, network } from './cut-network';
import { PUMP_SETS } from './own-sets';
import { complaintsOf, signIn, stateOf } from './person';

const test = base.extend<{ line: Network }>({
  line: async ({ baseURL }, use) => {
    const line = await network(baseURL as string);
    await use(line);
    await line.close();
  },
});

/** What the browser says of a network that is not there is no complaint. */
const NO_NETWORK = /ERR_(CONNECTION|INTERNET|EMPTY|SOCKET|NETWORK)|Failed to fetch/;

/** Opens the app at the pump and waits until the site lies on the phone and the app is kept. */
async function carry(page: Page, at: string) {
  await page.goto(`${at}/pump`);
  await expect(page.getByText(/lie on this phone/)).toBeVisible();
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
}

const strip = (page: Page) => page.getByRole('status').filter({ hasText: 'Snapshot' });

/** From the set to its first candidate's swap form, and the record. Answers the motor that went in. */
async function record(page: Page, at: string, tag: string): Promise<string> {
  const motor = await openSwapForm(page, at, tag);
  await fill(page);
  return motor;
}

async function openSwapForm(page: Page, at: string, tag: string): Promise<string> {
  await page.goto(`${at}/pump/sets/${tag}/candidates?from=shelf`);
  const first = page.locator('.rank a').first();
  const motor = (await first.textContent()) as string;
  await first.click();
  await page.getByRole('link', { name: 'Record the swap' }).click();
  return motor;
}

async function fill(page: Page) {
  await page.getByText('Bearing', { exact: true }).click();
  await page.getByText('To repair', { exact: true }).click();
  await page.getByRole('button', { name: 'Record the swap' }).click();
}

/** As the register has it, whatever the phone shows. */
async function motorIn(page: Page, baseURL: string, tag: string): Promise<string | null> {
  const answer = await page.request.get(`${baseURL}/api/v1/sets/${tag}`);
  return ((await answer.json()) as { motorNumber: string | null }).motorNumber;
}

test('without a network a set is found, listed and drawn, and a reload changes nothing', async ({ page, line }) => {
  const complaints = complaintsOf(page);
  await carry(page, line.at);
  line.cut();
  await page.getByLabel('Find a set').fill('cp lO8');
  await page.getByRole('link', { name: 'CP-108', exact: true }).click();
  await expect(page.getByRole('heading', { level: 1, name: 'CP-108' })).toBeVisible();
  for (const name of ['Duty', 'Supply', 'History']) await expect(page.getByRole('heading', { name })).toBeVisible();
  await page.reload();
  await expect(page.getByRole('heading', { level: 1, name: 'CP-108' })).toBeVisible();
  await page.getByRole('link', { name: 'What can go in?' }).click();
  await page.locator('.rank a').first().click();
  await expect(page.getByRole('img', { name: /Side view, to scale/ })).toBeVisible();
  await expect(page.getByText('Isolate, lock out and prove dead')).toHaveCount(1);
  await expect(strip(page)).toContainText(/Snapshot \d\d:\d\d, .* old, nothing waits/);
  expect(complaints.filter((one) => !NO_NETWORK.test(one))).toEqual([]);
});

test('a page of the register opened without a network is shown from the phone, one that no phone has is said', async ({
  page,
  line,
}) => {
  await carry(page, line.at);
  line.cut();
  await page.goto(`${line.at}/sets/CP-108/candidates`);
  await expect(page.getByRole('heading', { name: 'What can go in?' })).toBeVisible();
  await expect(strip(page)).toBeVisible();
  await page.goto(`${line.at}/desk`);
  await expect(page.getByRole('heading', { name: 'This page needs the network' })).toBeVisible();
});

test('the list on the phone is the list of the register', async ({ page, line, baseURL }) => {
  await carry(page, line.at);
  for (const tag of ['SL-115', 'FS-101', 'SK-105', 'OR-111']) {
    const lists: string[][] = [];
    for (const at of [`${line.at}/pump`, baseURL as string]) {
      await page.goto(`${at}/sets/${tag}/candidates`);
      await expect(page.getByRole('heading', { name: 'To buy' })).toBeVisible();
      // Not from other sets: the tests beside this one swap their motors.
      const sections = page.locator('section', { has: page.getByRole('heading', { name: /^(On a shelf|To buy)/ }) });
      lists.push(await sections.locator('.rank > li').allTextContents());
    }
    expect(lists[0]?.length).toBeGreaterThan(0);
    expect(lists[0]).toEqual(lists[1]);
  }
});

test('R5 a swap recorded without a network waits through a reload and goes up once when it is back', async ({
  page,
  line,
  baseURL,
}) => {
  const tag = PUMP_SETS.whole;
  await carry(page, line.at);
  line.cut();
  const motor = await record(page, line.at, tag);
  await expect(page.getByText('Waits for the network.')).toBeVisible();
  await expect(strip(page)).toContainText('1 record waits');
  await page.reload();
  await expect(strip(page)).toContainText('1 record waits');
  // Seen as done: the motor stands in the set on this phone.
  await expect(page.getByRole('link', { name: motor, exact: true })).toBeVisible();
  // What was read at the pump after it was recorded, and before the register has it.
  await page.getByRole('link', { name: 'Add readings of its swap' }).click();
  await page.getByLabel('Insulation', { exact: true }).fill('550');
  await page.getByRole('button', { name: 'Keep the readings' }).click();
  await expect(strip(page)).toContainText('2 records wait');
  await line.mend();
  await page.evaluate(() => window.dispatchEvent(new Event('online')));
  await page.reload();
  await expect(strip(page)).toContainText('nothing waits');
  expect(await motorIn(page, baseURL as string, tag)).toBe(motor);
  await page.goto(`${baseURL}/sets/${tag}`);
  await expect(page.getByRole('listitem').filter({ hasText: `${motor} in` })).toHaveCount(1);
  await page.getByRole('link', { name: `${motor} in` }).click();
  await expect(page.getByText('550 MΩ')).toBeVisible();
});

test('R4 somebody was first: the technician is told who, and nothing is lost', async ({ page, line, baseURL }) => {
  const tag = PUMP_SETS.taken;
  await carry(page, line.at);
  line.cut();
  const motor = await record(page, line.at, tag);
  await expect(strip(page)).toContainText('1 record waits');
  // Meanwhile the same motor goes into another set.
  await takeElsewhere(page.context(), baseURL as string, PUMP_SETS.taker, motor);
  await line.mend();
  await page.reload();
  await expect(strip(page)).toContainText('1 to settle');
  await page.getByRole('link', { name: 'See it' }).first().click();
  await expect(page.getByRole('alert')).toContainText(PUMP_SETS.taker);
  await expect(page.getByText(`${motor} in`)).toBeVisible();
  await page.reload();
  await expect(page.getByText(`${motor} in`)).toBeVisible();
  await page.getByRole('button', { name: 'Take it away' }).click();
  await page.getByRole('button', { name: 'Yes, take it away' }).click();
  await expect(page.getByText('Nothing waits: the register')).toBeVisible();
});

test('R5 two tabs send what waits once', async ({ page, context, line, baseURL }) => {
  const tag = PUMP_SETS.tabs;
  const sent: string[] = [];
  context.on('request', (request) => {
    if (request.url().endsWith('/pump/outbox')) sent.push(request.url());
  });
  await carry(page, line.at);
  line.cut();
  const motor = await record(page, line.at, tag);
  const other = await context.newPage();
  await other.goto(`${line.at}/pump`);
  await expect(strip(other)).toContainText('1 record waits');
  await line.mend();
  await Promise.all([page.reload(), other.reload()]);
  for (const one of [page, other]) await expect(strip(one)).toContainText('nothing waits');
  expect(await motorIn(page, baseURL as string, tag)).toBe(motor);
  await page.goto(`${baseURL}/sets/${tag}`);
  await expect(page.getByRole('listitem').filter({ hasText: `${motor} in` })).toHaveCount(1);
});

test('a fault told without a network opens the list, stands on the phone, and goes up', async ({
  page,
  line,
  baseURL,
}) => {
  const tag = PUMP_SETS.fault;
  await carry(page, line.at);
  line.cut();
  await page.goto(`${line.at}/pump/sets/${tag}`);
  await page.getByRole('link', { name: 'It has failed' }).click();
  await page.getByRole('button', { name: 'Seized' }).click();
  await expect(page.getByRole('heading', { name: 'What can go in?' })).toBeVisible();
  await page.goto(`${line.at}/pump`);
  await expect(page.getByRole('listitem').filter({ hasText: tag }).first()).toContainText('Failed');
  await line.mend();
  await page.reload();
  await expect(strip(page)).toContainText('nothing waits');
  await page.goto(`${baseURL}/sets/${tag}`);
  await expect(page.getByText('Seized').first()).toBeVisible();
});

test('what was typed of a swap is there again after the phone forgot the page', async ({ page, line }) => {
  await carry(page, line.at);
  line.cut();
  await openSwapForm(page, line.at, PUMP_SETS.draft);
  await page.getByText('Bearing', { exact: true }).click();
  await page.getByLabel('Note').fill('Grease hard.');
  await page.reload();
  await expect(page.getByLabel('Note')).toHaveValue('Grease hard.');
  await expect(page.getByLabel('Bearing', { exact: true })).toBeChecked();
});

test('R5 a phone without room refuses, and what was typed is still there', async ({ page, line }) => {
  await carry(page, line.at);
  await openSwapForm(page, line.at, PUMP_SETS.draft);
  await page.getByText('Winding', { exact: true }).click();
  await page.getByText('To scrap', { exact: true }).click();
  await page.getByLabel('Note').fill('Full phone.');
  // As a browser answers that has no room: the test's own keeps what it is given.
  for (const worker of page.workers())
    await worker.evaluate(() => {
      IDBObjectStore.prototype.put = () => {
        throw new DOMException('No room.', 'QuotaExceededError');
      };
    });
  await page.getByRole('button', { name: 'Record the swap' }).click();
  await expect(page.getByRole('alert')).toContainText('no room left, so nothing was recorded');
  await expect(page.getByLabel('Note')).toHaveValue('Full phone.');
  await page.goto(`${line.at}/pump/waiting`);
  await expect(page.getByText('Nothing waits: the register')).toBeVisible();
});

test('R5 by a wrong clock a swap is recorded at the server’s time, and the phone’s is kept as a note', async ({
  page,
  line,
  baseURL,
}) => {
  await page.clock.setSystemTime(new Date('2031-05-06T07:08:00Z'));
  await carry(page, line.at);
  const motor = await record(page, line.at, PUMP_SETS.clock);
  await expect(strip(page)).toContainText('nothing waits');
  await expect.poll(() => motorIn(page, baseURL as string, PUMP_SETS.clock)).toBe(motor);
  await page.goto(`${baseURL}/sets/${PUMP_SETS.clock}`);
  const line1 = page.getByRole('listitem').filter({ hasText: `${motor} in` });
  await expect(line1).not.toContainText('2031');
});

test('a label code typed without a network leads to its set, and the job sheet is there', async ({ page, line }) => {
  await carry(page, line.at);
  await page.goto(`${line.at}/sets/${PUMP_SETS.draft}`);
  const code = (await page
    .getByText(/^[0-9A-Z]{4}-[0-9A-Z]{4}$/)
    .first()
    .textContent()) as string;
  line.cut();
  await page.goto(`${line.at}/pump/scan`);
  await page.getByLabel(/code/i).last().fill(code.toLowerCase());
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { level: 1, name: PUMP_SETS.draft })).toBeVisible();
  await page.goto(`${line.at}/pump/sets/${PUMP_SETS.draft}/candidates?from=shelf`);
  await page.locator('.rank a').first().click();
  await page.getByRole('link', { name: 'Job sheet' }).click();
  await expect(page.getByText('Leads for this supply')).toBeVisible();
});

test('S12 signing out at the pump wipes the phone, and says first what would be lost', async ({
  browser,
  line,
  baseURL,
}) => {
  // A sign-out ends its session: this one is its own.
  const context = await browser.newContext({ storageState: { cookies: [], origins: [] } });
  const own = await context.newPage();
  await own.goto(`${baseURL}/sign-in`);
  await signIn(own, 'technician');
  await carry(own, line.at);
  line.cut();
  await own.goto(`${line.at}/pump/sets/${PUMP_SETS.fault}/fault`);
  await own.getByRole('button', { name: 'Leak' }).click();
  await expect(strip(own)).toContainText('1 record waits');
  await own.goto(`${line.at}/pump`);
  await own.getByRole('button', { name: 'Sign out' }).click();
  await expect(own.getByRole('alert')).toContainText('1 record has not gone up');
  await own.getByRole('button', { name: 'Sign out and lose them' }).click();
  await expect(own.getByText('There is no network')).toBeVisible();
  await line.mend();
  await own.getByRole('button', { name: 'Sign out and lose them' }).click();
  await expect(own).toHaveURL(/sign-in/);
  expect(await own.evaluate(keptParts)).toBe(0);
  await context.close();
});

test.describe('signed in for this test alone', () => {
  test.use({ storageState: { cookies: [], origins: [] } });

  test('S12 without a person nothing comes onto the phone', async ({ page, line }) => {
    await page.goto(`${line.at}/pump`);
    await expect(page.getByRole('link', { name: 'Sign in' })).toBeVisible();
    expect(await page.evaluate(keptParts)).toBe(0);
  });
});

test('S12 the app that is kept holds no page of a signed-in person and no answer of the register', async ({
  page,
  line,
}) => {
  await carry(page, line.at);
  await page.goto(`${line.at}/sets/CP-108`);
  await page.goto(`${line.at}/pump/sets/CP-108`);
  await expect(page.getByRole('heading', { level: 1, name: 'CP-108' })).toBeVisible();
  const kept = await page.evaluate(async () => {
    const texts: [string, string][] = [];
    for (const name of await caches.keys())
      for (const request of await (await caches.open(name)).keys()) {
        const answer = await caches.match(request);
        texts.push([new URL(request.url).pathname, (await answer?.text()) ?? '']);
      }
    return texts;
  });
  expect(kept.length).toBeGreaterThan(4);
  for (const [path, text] of kept) {
    expect(path).toMatch(/^\/(pump|phone\/[\w.-]+)$/);
    expect(text).not.toContain('CP-108');
    expect(text).not.toContain('example.com');
  }
});

const keptParts = () =>
  new Promise<number>((resolve) => {
    const opening = indexedDB.open('bedplate');
    opening.onsuccess = () => {
      if (!opening.result.objectStoreNames.contains('parts')) return resolve(0);
      const asking = opening.result.transaction('parts').objectStore('parts').count();
      asking.onsuccess = () => resolve(asking.result);
    };
  });

/** Somebody else puts the motor into another set, at the register. */
async function takeElsewhere(context: BrowserContext, baseURL: string, tag: string, motor: string) {
  const other = await context.browser()?.newContext({ storageState: stateOf('planner'), baseURL });
  if (other === undefined) throw new Error('There is no browser.');
  const page = await other.newPage();
  await page.goto(`/sets/${tag}/swap/${motor}`);
  const note = page.getByLabel(/Note|Who decided/);
  await page.getByText('Bearing', { exact: true }).click();
  await page.getByText('To repair', { exact: true }).click();
  await note.fill('Needed here first.');
  await page.getByRole('button', { name: 'Record the swap' }).click();
  await expect(page.getByText('Swap, as recorded')).toBeVisible();
  await other.close();
}
