import { expect, type Page, test } from '@playwright/test';
import { complaintsOf } from './person';
import { isWhole } from './whole';

const boxes = (page: Page) => page.getByRole('checkbox', { name: / takes part$/ });
const choose = (page: Page) => page.getByRole('button', { name: 'Choose', exact: true }).click();

for (const javaScriptEnabled of [true, false])
  test.describe(javaScriptEnabled ? 'with script' : 'without script', () => {
    test.use({ javaScriptEnabled });

    test('what to hold for some ticked sets, by a price list that is put right on the way', async ({ page }) => {
      const complaints = complaintsOf(page);
      const whole = async (what: string) => {
        if (javaScriptEnabled) await isWhole(page, what);
      };
      await page.goto('/hold?criticality=1');
      await page.getByRole('button', { name: 'Show the sets' }).click();
      await expect(boxes(page).first()).toBeVisible();
      const all = await boxes(page).count();
      expect(all).toBeGreaterThan(2);
      await expect(page.getByText(`Sets that take part: ${all} of ${all}`)).toBeVisible();

      await page.getByRole('button', { name: 'Tick none' }).click();
      await expect(page.getByText('No set is ticked: tick those for which')).toBeVisible();
      await whole('no set ticked');
      const named = await boxes(page).nth(1).getAttribute('value');
      await boxes(page).nth(1).check();

      // A line that cannot be read keeps everything that was typed and ticked.
      const typed = '5.5 kW: 640\n7.5 kW 800';
      await page.getByLabel('Aim').selectOption('least to pay for them');
      await page.getByLabel('Checks').selectOption('every check counted');
      await page.getByLabel('Of a swap at most').fill('40');
      await page.getByLabel(/^Price list/).fill(typed);
      await choose(page);
      const problems = page.getByRole('alert').filter({ hasText: 'not right yet' });
      await expect(problems).toContainText('Price list, line 2, “7.5 kW 800”: a line is a rating, a colon and a price');
      await expect(page.getByLabel(/^Price list/)).toHaveValue(typed);
      await expect(page.getByLabel('Of a swap at most')).toHaveValue('40');
      await expect(page.getByText(`Sets that take part: 1 of ${all}`)).toBeVisible();
      await whole('a price list that cannot be read');

      const sizes = [
        ...['0.37', '0.55', '0.75', '1.1', '1.5', '2.2', '3', '4', '5.5', '7.5', '11', '15', '18.5', '22'],
      ];
      const list = sizes.map((kw) => `${kw} kW: ${100 + 60 * Number(kw)}`).join('\n');
      await page.getByLabel(/^Price list/).fill(list);
      await page.getByLabel('Price of one, each').fill('100');
      await page.getByLabel('and for each kW').fill('80');
      await page.getByLabel('From', { exact: true }).selectOption('bought alone');
      await choose(page);
      await expect(page).toHaveURL(/[?&]prices=0\.37\+kW/);
      const held = page.getByRole('table', { name: 'Motors to hold' }).locator('tbody tr');
      await expect(held).toHaveCount(1);
      await expect(held).toContainText(/list, line \d+: |each and per kW/);
      await expect(held).toContainText(String(named));
      await expect(page.getByText('Proven: no choice takes less than')).toBeVisible();
      await whole('what to hold by a price list');

      // The address alone asks the same again.
      const asked = page.url();
      await page.goto('/desk');
      await page.goto(asked);
      await expect(held).toContainText(String(named));
      await expect(page.getByLabel(/^Price list/)).toHaveValue(list);

      // What must not be held is left out, and can be taken back.
      const box = held.getByRole('checkbox', { name: /^Leave out / });
      const out = String(await box.getAttribute('value'));
      await box.check();
      await page.getByRole('button', { name: 'Choose without the ticked' }).click();
      await expect(page.getByRole('group', { name: 'Left out, and not to be held' })).toContainText(out);
      await expect(page.getByRole('checkbox', { name: `Leave out ${out}`, exact: true })).toHaveCount(0);
      await whole('a motor left out');
      await page.getByRole('checkbox', { name: out, exact: true }).uncheck();
      await choose(page);
      await expect(page.getByRole('checkbox', { name: `Leave out ${out}`, exact: true })).toBeVisible();

      await page.getByText(`Sets that take part: 1 of ${all}`).click();
      await page.getByRole('button', { name: 'Tick all' }).click();
      await expect(page.getByText(`Sets that take part: ${all} of ${all}`)).toBeVisible();
      expect(complaints).toEqual([]);
    });
  });

test('where there is nothing to choose for, or from, the page says so', async ({ page }) => {
  await page.goto('/hold?choose=1&q=nothing%20like%20it');
  await expect(page.getByText('No set is like this.')).toBeVisible();
  await page.goto('/hold?choose=1&tags=none-such');
  await expect(page.getByText('No set in use has the tag none-such.')).toBeVisible();
  // A motor that must be there today and is bought is never there.
  await page.goto('/hold?choose=1&criticality=1&from=buy&lead=0&days=1');
  await expect(page.getByText('Nothing that may be chosen could go into')).toBeVisible();
  await expect(page.getByRole('heading', { name: 'Covered by nothing that may be chosen' })).toBeVisible();
  await isWhole(page, 'nothing to choose from');
});
