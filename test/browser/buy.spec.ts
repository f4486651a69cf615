import { expect, test } from '@playwright/test';
import { complaintsOf } from './person';
import { isWhole } from './whole';

/** Two sets of the demo, by tag. */
const SETS = ['CP-108', 'OR-115'];

for (const javaScriptEnabled of [true, false])
  test.describe(javaScriptEnabled ? 'with script' : 'without script', () => {
    test.use({ javaScriptEnabled });

    test('one motor for several sets: the options, where each would serve, and the file', async ({ page }) => {
      const complaints = complaintsOf(page);
      await page.goto('/buy');
      await page.getByLabel('Tags of the sets').fill(SETS.join(', '));
      await page.getByRole('button', { name: 'Show' }).click();
      const served = page.getByRole('table', { name: 'Sets that it would serve' });
      for (const tag of SETS) await expect(served.getByRole('link', { name: tag, exact: true })).toBeVisible();
      await expect(page.getByText('Rated power')).toBeVisible();
      await expect(page.getByText('to be told', { exact: true }).first()).toBeVisible();
      if (javaScriptEnabled) await isWhole(page, 'one motor for several sets');

      const href = await page.getByRole('link', { name: 'CSV' }).getAttribute('href');
      const file = await page.request.get(String(href));
      expect(file.headers()['content-type']).toContain('text/csv');
      expect(await file.text()).toContain('Rated power');
      const json = await (await page.request.get(String(href).replace('/buy/export', '/api/v1/purchase'))).json();
      expect(json.sets).toEqual(SETS);

      await page.getByRole('link', { name: `Take out ${SETS[0]}` }).click();
      await expect(page.getByRole('link', { name: `Take out ${SETS[0]}` })).toBeHidden();
      expect(complaints).toEqual([]);
    });
  });

test('the next failure: another price of energy changes the money and not the energy', async ({ page }) => {
  await page.goto(`/sets/${SETS[0]}`);
  await page.getByRole('link', { name: /The next failure/ }).click();
  const now = page.getByRole('row', { name: /As it runs/ });
  const cells = () => now.getByRole('cell').allInnerTexts();
  await page.getByLabel('Hours run in a year').fill('4000');
  await page.getByLabel('Price of a kWh').fill('0.10');
  await page.getByRole('button', { name: 'Work it out' }).click();
  await expect(page).toHaveURL(/price=0.10/);
  const [, kwh, money] = await cells();
  await page.getByLabel('Price of a kWh').fill('0.20');
  await page.getByRole('button', { name: 'Work it out' }).click();
  await expect(page).toHaveURL(/price=0.20/);
  const [, sameKwh, twice] = await cells();
  expect(sameKwh).toBe(kwh);
  // Whole figures of a doubled sum: a unit off at most.
  const sum = (text: string | undefined) => Number(text?.replaceAll(',', ''));
  expect(Math.abs(sum(twice) - 2 * sum(money))).toBeLessThanOrEqual(1);
  await isWhole(page, 'the next failure');
});

test('a month: the one before it, one without anything, and none', async ({ page }) => {
  await page.goto('/reports/2020-03');
  await expect(page.getByRole('heading', { name: 'March 2020' })).toBeVisible();
  await expect(page.getByText('Nothing failed, was swapped')).toBeVisible();
  await page.getByRole('link', { name: 'February 2020' }).click();
  await expect(page.getByRole('heading', { name: 'February 2020' })).toBeVisible();
  await isWhole(page, 'a quiet month');
  await page.goto('/reports/2020-13');
  await expect(page.getByRole('heading', { name: 'No such month' })).toBeVisible();
});
