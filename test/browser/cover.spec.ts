import { expect, test } from '@playwright/test';
import { complaintsOf } from './person';
import { isWhole } from './whole';

for (const javaScriptEnabled of [true, false])
  test.describe(javaScriptEnabled ? 'with script' : 'without script', () => {
    test.use({ javaScriptEnabled });

    test('from the cover’s list to what nothing covers, to a motor used tonight, and to what to hold', async ({
      page,
    }) => {
      const complaints = complaintsOf(page);
      const whole = async (what: string) => {
        if (javaScriptEnabled) await isWhole(page, what);
      };
      await page.goto('/desk');
      await page.getByRole('link', { name: 'Cover', exact: true }).click();
      await expect(page.getByRole('heading', { level: 1, name: 'Cover', exact: true })).toBeVisible();
      await expect(page.getByRole('region', { name: 'Cover by criticality' })).toBeVisible();
      await whole('the cover');

      await page.getByLabel('Cover', { exact: true }).selectOption('nothing could go in');
      await page.getByRole('button', { name: 'Show' }).click();
      await expect(page).toHaveURL(/[?&]state=none\b/);
      const bare = page.getByRole('table', { name: 'Cover of the sets' }).locator('tbody tr');
      await expect(bare.first()).toContainText('nothing on the shelves');
      expect(await bare.count()).toBe(await bare.filter({ hasText: 'nothing on the shelves' }).count());
      await whole('the sets that nothing covers');

      await page.getByRole('link', { name: 'By shelf motor' }).click();
      await page.getByLabel('Worth').selectOption('the last for a set');
      await page.getByRole('button', { name: 'Show' }).click();
      await expect(page).toHaveURL(/[?&]state=needed\b/);
      const used = page.getByRole('link', { name: /left, if .+ is used$/ }).first();
      const none = /^(\d+) with none/.exec(String(await used.textContent()).trim())?.[1];
      expect(Number(none), 'sets that the motor needed most would leave bare').toBeGreaterThan(0);
      await used.click();
      await expect(page).toHaveURL(/[?&]used=[^&]+#used$/);
      await expect(page.locator('#used')).toContainText(`${none} of the `);
      await expect(page.locator('#used').getByText('none left').first()).toBeVisible();
      await whole('a motor used tonight');

      await page.goto('/desk');
      await page.getByRole('link', { name: 'What to hold' }).click();
      await page.getByLabel('Criticality').selectOption('1');
      await page.getByRole('button', { name: 'Choose' }).click();
      await expect(page).toHaveURL(/[?&]choose=1\b/);
      await expect(page.getByRole('region', { name: 'Motors to hold' })).toBeVisible();
      await whole('what to hold');
      expect(complaints).toEqual([]);
    });
  });

test('the matrix asks what the list asks, scrolls within itself under its heads, and leads back', async ({ page }) => {
  await page.goto('/cover?criticality=1');
  await page.getByRole('link', { name: 'The same sets as a matrix' }).click();
  await expect(page).toHaveURL(/\/cover\/matrix\?criticality=1$/);
  const region = page.getByRole('region', { name: 'Kinds of set against kinds of shelf motor' });
  await expect(region.getByRole('img', { name: /^(Straight swap|Swap with work|Check first)$/ }).first()).toBeVisible();
  await isWhole(page, 'the matrix of the cover');

  // Its heads stay where they are while it is scrolled, by keys as well.
  await region.focus();
  await expect(region).toBeFocused();
  const row = region.locator('tbody th').first();
  const column = region.locator('thead th').nth(1);
  const placed = async () => [(await row.boundingBox())?.x, (await column.boundingBox())?.y];
  const before = await placed();
  await region.evaluate((one) => one.scrollTo({ left: 120, top: 120 }));
  expect(await placed()).toEqual(before);

  await page.getByRole('link', { name: 'The same sets as a list, one a line' }).click();
  await expect(page).toHaveURL(/\/cover\?criticality=1$/);
  await page.goto('/cover/matrix?q=nothing%20like%20it');
  await expect(page.getByText('No set is like this.')).toBeVisible();
  await isWhole(page, 'a matrix of no sets');
});
