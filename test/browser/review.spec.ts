import { expect, test } from '@playwright/test';
import { stateOf } from './person';
import { isWhole } from './whole';

test.use({ storageState: stateOf('planner') });

/** The demonstration's set whose drive may go faster than its pump. */
const TAG = 'RF-201';

test('the review is reached from the desk, says why and what would put it right, and is asked by its address', async ({
  page,
}) => {
  await page.goto('/desk');
  await page.getByRole('link', { name: 'Set review' }).click();
  const line = page.locator('.doubts > li').filter({ hasText: TAG }).filter({ hasText: 'Speed of the pump' });
  await page.goto('/review?state=all');
  await expect(line).toContainText('above that it runs too fast');
  await expect(line).toContainText('Work at the set:');
  await isWhole(page, 'the set review');
  await page.goto('/review?state=all&rule=speed&group=area');
  await expect(page.getByRole('region', { name: 'Findings by area' })).toBeVisible();
  await isWhole(page, 'the set review by area');
  await page.goto('/review/charts');
  await expect(page.getByRole('img', { name: /^How many sets are loaded/ })).toBeVisible();
  await isWhole(page, 'the charts of the review');
});

test('what was read at a set is refused field by field, kept, and tells its load', async ({ page }, info) => {
  await page.goto(`/sets/${TAG}/measured`);
  await page.getByLabel('Amps L1').fill('a few');
  await page.getByLabel('Input power').fill('3.9');
  await page.getByRole('button', { name: 'Keep what was read' }).click();
  await expect(page.getByRole('alert').first()).toContainText('Amps L1 is not a figure.');
  await expect(page.getByLabel('Input power')).toHaveValue('3.9');
  await isWhole(page, 'a refused measurement');
  await page.getByLabel('Amps L1').fill('6.1');
  await page.getByLabel('Note').fill(`Warm product, ${info.project.name}`);
  await page.getByRole('button', { name: 'Keep what was read' }).click();
  await expect(page.getByText('Kept. The set review reckons with it.')).toBeVisible();
  await expect(page.getByText(`Warm product, ${info.project.name}`)).toBeVisible();
  await isWhole(page, 'the measurements of a set');
  await page.goto(`/sets/${TAG}`);
  await expect(page.getByRole('region', { name: 'Load by the readings' })).toBeVisible();
});
