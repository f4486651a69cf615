import fs from 'node:fs';
import { expect, test } from '@playwright/test';

/** Ends the tests' own database outright; the program starts it again. */
const killDatabase = () =>
  process.kill(Number(fs.readFileSync('.data/browser-test/pg/postmaster.pid', 'utf8').split('\n')[0]), 'SIGKILL');

test('with its database gone a page says so, keeps what was typed, and works again when it is back', async ({
  page,
}) => {
  // What stands in the form is no fault yet.
  const told = page.getByRole('status').filter({ hasText: 'hums and trips' });
  const report = page.getByRole('button', { name: 'Report, and see what can go in' });
  await page.goto('/sets/OR-115/failed');
  await page.getByText('Several, in words, or with a photograph').click();
  await page.getByLabel('What is wrong?').fill('hums and trips');
  killDatabase();
  await report.click();
  await expect(page.getByText('The register’s database does not answer')).toBeVisible();
  await expect(page.getByLabel('What is wrong?')).toHaveValue('hums and trips');
  await expect(async () => {
    await report.click();
    await expect(told.first()).toBeVisible({ timeout: 2_000 });
  }).toPass({ timeout: 180_000 });

  killDatabase();
  const answer = await page.goto('/sets/OR-115');
  expect(answer?.status()).toBe(503);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('The register’s database does not answer');
  await expect(async () => {
    expect((await page.goto('/sets/OR-115'))?.status()).toBe(200);
  }).toPass({ timeout: 180_000 });
  await expect(page.getByRole('listitem').filter({ hasText: 'hums and trips' }).first()).toBeVisible();
});
