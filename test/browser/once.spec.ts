import { expect, test } from '@playwright/test';
import { stateOf } from './person';

// What the demonstration has one of, or what two at once would rightly be refused.

test('an administrator sets the hours of work, everybody else sees them', async ({ browser, page }) => {
  const office = await browser.newPage({ storageState: stateOf('administrator') });
  await office.goto('/site');
  await office.getByLabel('Rebore').fill('a day');
  await office.getByRole('button', { name: 'Save' }).click();
  await expect(office.locator('.problem-list')).toContainText('Rebore: “a day” is not a figure');
  await expect(office.getByLabel('Rebore')).toHaveValue('a day');

  const other = await browser.newPage({ storageState: stateOf('administrator') });
  await other.goto('/site');
  await other.getByLabel('Rebore').fill('3,25');
  await other.getByRole('button', { name: 'Save' }).click();
  await expect(other.getByText('Saved.')).toBeVisible();

  await office.getByLabel('Rebore').fill('4');
  await office.getByRole('button', { name: 'Save' }).click();
  await expect(office.getByText('Somebody else has saved in between')).toBeVisible();
  await expect(office.getByText('Somebody else has saved 3.25 here.')).toBeVisible();
  await expect(office.getByLabel('Rebore')).toHaveValue('4');
  await office.getByRole('button', { name: 'Save' }).click();
  await expect(office.getByText('Saved.')).toBeVisible();

  await page.goto('/site');
  await expect(page.getByRole('button', { name: 'Save' })).toHaveCount(0);
  await expect(page.locator('.kv div').filter({ hasText: 'Rebore' })).toContainText('4 h');
  await Promise.all([office.close(), other.close()]);
});

test('a set that stands empty is filled', async ({ page }) => {
  await page.goto('/sets/OR-201/swap/M-0227');
  await page.getByText('Not known yet', { exact: true }).click();
  await expect(page.getByText('Where does')).toHaveCount(0);
  await page.getByLabel('Who decided that it goes in, and why?').fill('Slower is enough tonight');
  await page.getByRole('button', { name: 'Record the swap' }).click();
  await expect(page.getByText('Swap, as recorded')).toBeVisible();
  await page.goto('/motors/M-0227');
  await expect(page.getByText('OR-201').first()).toBeVisible();
});
