import path from 'node:path';
import { test as base, expect, type Locator, type Page } from '@playwright/test';
import { runningUrl } from '../../scripts/pg.mjs';
import { Site } from '../walk/site';
import { BY_KEYS, REFUSED } from './own-sets';
import { complaintsOf, stateOf } from './person';
import { AT_THE_PUMP, addressesOf, fillIn, stateFor } from './readable/addresses';
import { axeFinds } from './readable/axe';
import { byKeys } from './readable/by-keys';
import { cut } from './readable/cut';
import { misprinted } from './readable/printed';
import { smallTargets } from './readable/small-targets';

// biome-ignore lint/complexity/noBannedTypes: playwright's own way to say that there are no fixtures of a test
const test = base.extend<{}, { site: Site }>({
  site: [
    async ({ browser }, use, { project }) => {
      const url = runningUrl(path.resolve('.data/browser-test/pg'));
      if (url === null) throw new Error('the database of the tests is not there');
      const page = await browser.newPage({ storageState: stateOf('planner'), baseURL: project.use.baseURL as string });
      const site = await Site.of(url, REFUSED, async (at) => {
        await page.goto(at);
        return page.content();
      });
      await fillIn(site, page);
      await page.close();
      await use(site);
      await site.end();
    },
    { scope: 'worker' },
  ],
});

/** A technician's phone by day and a planner's desk by night: both widths, both sheets, more than one person's controls. */
const LOOKS = [
  { sheet: 'day', width: 360, order: ['technician', 'planner', 'administrator'] },
  { sheet: 'night', width: 1280, order: ['planner', 'administrator'] },
] as const;

/** Waits for the site to lie on the phone. */
async function carry(page: Page) {
  await page.goto('/pump');
  await expect(page.getByText(/lie on this phone/)).toBeVisible();
}

/** As many as one test goes through: two workers share them evenly, and a slow machine ends each in time. */
const PAGES = 12;
const parts = (all: readonly string[]) =>
  Array.from({ length: Math.ceil(all.length / PAGES) }, (_, i) => all.slice(i * PAGES, (i + 1) * PAGES));

for (const { sheet, width, order } of LOOKS)
  for (const who of ['pump', ...order, null] as const)
    parts(who === 'pump' ? AT_THE_PUMP : addressesOf(who, order)).forEach((addresses, i) => {
      test(`${sheet} sheet, ${width} px, ${who ?? 'nobody'}, part ${i + 1}: every page can be read, pressed and gone through by keys`, async ({
        browser,
        site,
        baseURL,
      }) => {
        const context = await browser.newContext({
          storageState: stateFor(who === 'pump' ? 'technician' : who),
          viewport: { width, height: 740 },
          hasTouch: width < 500,
        });
        await context.addCookies([{ name: 'theme', value: sheet, url: baseURL ?? '' }]);
        await context.addInitScript((name) => localStorage.setItem('sheet', name), sheet); // the app at the pump keeps it there
        const page = await context.newPage();
        const complaints = complaintsOf(page);
        if (who === 'pump') await carry(page);
        const wrong: string[] = [];
        for (const at of addresses) wrong.push(...(await wrongAt(page, site.filled(at), { sheet, width })));
        await context.close();
        expect(wrong).toEqual([]);
        expect(complaints).toEqual([]);
      });
    });

async function wrongAt(page: Page, address: string, { sheet, width }: { sheet: string; width: number }) {
  await page.goto(address);
  await expect(page.getByRole('heading', { level: 1 }), address).toHaveCount(1);
  await expect(page.getByText(/^(Reading|Judging) .*…$/), address).toHaveCount(0);
  expect(await page.locator('html').getAttribute('data-theme'), address).toBe(sheet);
  expect(await page.title(), address).toMatch(/Bedplate/);
  const found = [...(await axeFinds(page)), ...(await cut(page))];
  // What is gone through and pressed is the same on both sheets.
  if (width === 360) {
    found.push(...(await byKeys(page)), ...(await smallTargets(page)));
    await page.setViewportSize({ width: 320, height: 740 }); // 1280 px at 400 %
    found.push(...(await cut(page)).map((one) => `at 400 %: ${one}`));
    await page.setViewportSize({ width, height: 740 });
  }
  return found.map((one) => `${address}  ${one}`);
}

/** Presses Tab until it has the focus. */
async function tabTo(page: Page, target: Locator) {
  await expect(target).toBeVisible();
  for (let i = 0; i < 150; i += 1) {
    await page.keyboard.press('Tab');
    if (await target.evaluate((one) => one === document.activeElement)) return;
  }
  throw new Error(`${target} was not reached`);
}

async function enter(page: Page, target: Locator) {
  await tabTo(page, target);
  await page.keyboard.press('Enter');
}

/** From the find box to the swap form, its reasons chosen. Answers the motor that goes in. */
async function toTheForm(page: Page, typed: string, tag: string): Promise<string> {
  await tabTo(page, page.getByRole('searchbox'));
  await page.keyboard.type(typed);
  await page.keyboard.press('Enter');
  await enter(page, page.getByRole('link', { name: tag, exact: true }));
  await expect(page.getByRole('heading', { level: 1, name: tag })).toBeVisible();
  await enter(page, page.getByRole('link', { name: 'What can go in?' }));
  const best = page.locator('.rank a').first();
  await expect(best).toBeVisible();
  const motor = (await best.textContent()) as string;
  await enter(page, best);
  await enter(page, page.getByRole('link', { name: 'Record the swap' }));
  // A group of choices is one stop; arrows go through it.
  await tabTo(page, page.getByRole('radio', { name: 'Bearing' }));
  await page.keyboard.press('Space');
  await tabTo(page, page.getByRole('radio', { name: 'To repair' }));
  await page.keyboard.press('Space');
  await page.keyboard.press('ArrowDown');
  await expect(page.getByRole('radio', { name: 'To scrap' })).toBeChecked();
  await page.keyboard.press('ArrowUp');
  await expect(page.getByRole('radio', { name: 'To repair' })).toBeChecked();
  return motor;
}

test.describe('by keys alone', () => {
  test.use({ storageState: stateOf('technician'), viewport: { width: 360, height: 740 } });

  test('at the pump a set is found and its swap recorded', async ({ page }) => {
    await carry(page);
    await page.keyboard.press('Tab');
    await expect(page.getByRole('link', { name: 'To the content' })).toBeFocused();
    await page.keyboard.press('Enter');
    await expect(page.locator('#content')).toBeFocused();
    const motor = await toTheForm(page, BY_KEYS.slice(0, -1), BY_KEYS);
    await tabTo(page, page.getByLabel('Insulation'));
    await page.keyboard.type('550');
    await tabTo(page, page.getByLabel(/Note|Who decided/));
    await page.keyboard.type('Greased by hand.');
    await enter(page, page.getByRole('button', { name: 'Record the swap' }));
    await expect(page.getByRole('heading', { level: 1, name: BY_KEYS })).toBeVisible();
    await expect(page.getByRole('status').filter({ hasText: 'nothing waits' })).toBeVisible();
    // The strip may say so before the record is kept: the register has the last word.
    const inSet = async () => {
      const answer = await page.request.get(`/api/v1/sets/${BY_KEYS}`);
      return ((await answer.json()) as { motorNumber: string | null }).motorNumber;
    };
    await expect.poll(inSet).toBe(motor);
    await page.goto(`/sets/${BY_KEYS}`);
    await expect(page.getByRole('listitem').filter({ hasText: `${motor}\u00a0in` })).toHaveCount(1);
  });

  test('in the register a set is found, and its swap form filled', async ({ page }) => {
    await page.goto('/');
    await page.keyboard.press('Tab');
    await expect(page.getByRole('link', { name: 'To the content' })).toBeFocused();
    await page.keyboard.press('Enter');
    await expect(page.locator('#content')).toBeFocused();
    await toTheForm(page, REFUSED.slice(0, -1), REFUSED);
    await tabTo(page, page.getByRole('button', { name: 'Record the swap' }));
  });
});

test('from the night sheet a set, a job, labels and a purchase print black on white, no wider than the paper', async ({
  browser,
  site,
  baseURL,
}) => {
  const context = await browser.newContext({ storageState: stateOf('technician') });
  await context.addCookies([{ name: 'theme', value: 'night', url: baseURL ?? '' }]);
  const page = await context.newPage();
  await page.setViewportSize({ width: 718, height: 1047 }); // A4 within margins of 10 mm, at 96 px to the inch
  await page.emulateMedia({ media: 'print' });
  const wrong: string[] = [];
  for (const at of [
    '/sets/{set}',
    '/sets/{set}/job/{best}',
    '/sets/{set}/buy/{rating}',
    '/labels?tag={set}&paper=a4-2x4',
  ]) {
    // A sheet of labels is as large as its paper, which has no margin.
    if (at.startsWith('/labels')) await page.setViewportSize({ width: 794, height: 1123 });
    const address = site.filled(at);
    await page.goto(address);
    await expect(page.getByRole('heading', { level: 1 }).or(page.locator('.label-sheet')).first()).toBeAttached();
    wrong.push(...(await misprinted(page)).map((one) => `${address}  ${one}`));
  }
  await context.close();
  expect(wrong).toEqual([]);
});
