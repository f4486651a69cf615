import AxeBuilder from '@axe-core/playwright';
import { expect, test } from '@playwright/test';
import { stateOf } from './person';

test.use({ storageState: stateOf('planner') });

test('many sets are changed together after a preview, and put back by one undo', async ({ page }) => {
  await page.goto('/sets?q=pectin');
  const ticks = page.getByRole('checkbox', { name: /^Choose / });
  expect(await ticks.count()).toBeGreaterThan(1);
  await ticks.nth(0).check();
  await ticks.nth(1).check();
  await page.getByRole('button', { name: 'Change the chosen' }).click();
  await expect(page.getByText('2 sets are chosen')).toBeVisible();
  await page.getByLabel('Altitude').fill('1234');
  await page.getByRole('button', { name: 'Show what changes' }).click();
  await expect(page.getByRole('cell', { name: 'Altitude: 1234 m' })).toHaveCount(2);
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  await page.getByRole('button', { name: 'Change all 2' }).click();
  await expect(page.getByText('Saved.')).toBeVisible();
  await page.getByRole('button', { name: 'Undo this change' }).click();
  await expect(page.getByText('Undone')).toBeVisible();
});

test('a list is kept under a name, and the keyboard finds its way', async ({ page }) => {
  await page.goto('/sets?q=syrup&sort=area');
  await page.getByText('Views').click();
  await page.getByLabel('Keep what the list shows now as').fill('Syrup by area');
  await page.getByRole('button', { name: 'Keep' }).click();
  await page.getByText('Views (1)').click();
  await expect(page.getByRole('link', { name: 'Syrup by area' })).toHaveAttribute('href', '/sets?q=syrup&sort=area');
  await page.getByRole('button', { name: 'Drop the view Syrup by area' }).click();
  await page.locator('h1').click();
  await page.keyboard.press('/');
  await expect(page.getByLabel('Words')).toBeFocused();
  await page.keyboard.press('Control+k');
  await page.getByRole('textbox', { name: 'Go to' }).fill('motors');
  await page.keyboard.press('Enter');
  await expect(page).toHaveURL(/\/motors$/);
  await page.keyboard.press('?');
  await expect(page.getByRole('dialog', { name: 'Keys' })).toBeVisible();
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
});
