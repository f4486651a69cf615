import { expect, type Page, test } from '@playwright/test';
import { enterMotor } from './enter-motor';
import { stateOf } from './person';
import { isWhole } from './whole';

test.use({ storageState: stateOf('planner') });

const entries = (page: Page) => page.locator('.history > li');

test('what was changed is told from what to what, found by number, and undone where it is told', async ({
  page,
}, info) => {
  const number = `A-${info.project.name}-told`;
  await enterMotor(page, number, 'FRAME 184T HP 5 VOLTS 460 AMPS 6.6 RPM 1750 HZ 60 PH 3');
  await page.goto(`/motors/${number}/edit`);
  await page.getByLabel('Maker').fill('Brandal');
  await page.getByLabel('Mass').fill('41');
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(page.getByText('Saved.')).toBeVisible();

  await page.goto('/desk');
  await page.getByRole('link', { name: 'Audit' }).click();
  await page.getByLabel('Tag or number').fill(number.toLowerCase());
  await page.getByRole('button', { name: 'Show' }).click();
  await expect(page).toHaveURL(/\/audit\?.*name=a-/);
  await expect(entries(page)).toHaveCount(2);
  const changed = entries(page).first();
  await expect(changed).toContainText('Ansel Brook');
  await expect(changed).toContainText(`Motor ${number}: Changed`);
  await expect(changed).toContainText('Maker Brandal');
  await expect(changed).toContainText('Mass 41 kg');
  await isWhole(page, 'the audit of one motor');

  await page.getByLabel('Done').selectOption({ label: 'Entered in the register' });
  await page.getByRole('button', { name: 'Show' }).click();
  await expect(page).toHaveURL(/did=set\.register/);
  await expect(entries(page)).toHaveCount(1);
  await page.getByLabel('Done').selectOption({ label: 'whatever' });
  await page.getByRole('button', { name: 'Show' }).click();

  await entries(page).first().getByRole('button', { name: 'Undo this change' }).click();
  await expect(page.getByText('Undone: everything stands as before.')).toBeVisible();
  await page.goto(`/audit?name=${number}`);
  await expect(entries(page).first()).toContainText('Maker: Brandal → not known');
  await entries(page).first().getByRole('link', { name: number }).click();
  await expect(page.getByRole('heading', { level: 1, name: number })).toBeVisible();
  await expect(page.getByText('Brandal').first()).toBeVisible(); // its history tells it still
});

test('a set and a motor are shown as they stood on a day, from their own pages', async ({ page }) => {
  const day = (ago: number) => new Date(Date.now() - ago * 86_400_000).toISOString().slice(0, 10);
  for (const path of ['/sets/OR-113', '/motors/M-0145']) {
    await page.goto(path);
    await page.getByRole('link', { name: 'As it stood on a day' }).click();
    await expect(page.getByText('As it stood', { exact: true })).toBeVisible();
    await isWhole(page, `${path} as it stood`);
    await page.getByLabel('At the end of').fill(day(3));
    await page.getByRole('button', { name: 'Show' }).click();
    await expect(page).toHaveURL(new RegExp(`day=${day(3)}`));
    await expect(page.getByText('It was not in the register yet')).toBeVisible();
  }
});

test('S32 the audit goes out as a file, and that it did is in it', async ({ page }) => {
  await page.goto('/audit?thing=area');
  const href = await page.getByRole('link', { name: 'This as CSV' }).getAttribute('href');
  expect(href).toBe('/audit/export?thing=area');
  const answer = await page.request.get(String(href));
  expect(answer.headers()['content-type']).toContain('text/csv');
  expect(answer.headers()['content-disposition']).toMatch(/attachment; filename="audit-\d{4}-\d\d-\d\d\.csv"/);
  const [head = '', ...rows] = (await answer.text())
    .replace(/^\ufeff/, '')
    .trim()
    .split('\r\n');
  expect(head).toContain('When (UTC)');
  expect(rows.length).toBeGreaterThan(3);
  expect(rows.filter((row) => !row.includes('Area'))).toEqual([]);
  await page.goto('/audit?did=audit.export');
  await expect(entries(page).first()).toContainText('Audit exported');
});

test('whole, it is accessible and in parts; a technician sees none of it, a planner nothing of people', async ({
  page,
  browser,
}) => {
  await page.goto('/audit');
  await isWhole(page, 'the audit');
  await expect(entries(page).first()).toBeVisible();
  const things = await page.getByLabel('What', { exact: true }).locator('option').allTextContents();
  expect(things).toContain('Motor');
  expect(things).not.toContain('Person');
  await page.getByRole('link', { name: 'Earlier' }).click();
  await expect(page).toHaveURL(/after=/);
  await expect(entries(page).first()).toBeVisible();
  await page.goto('/audit?thing=person');
  await expect(page.getByText('Nothing is recorded that is like this.')).toBeVisible();

  const office = await browser.newPage({ storageState: stateOf('administrator') });
  await office.goto('/audit?did=person.sign-in');
  await expect(entries(office).first()).toContainText('Signed in');
  const phone = await browser.newPage({ storageState: stateOf('technician') });
  expect((await phone.goto('/audit'))?.status()).toBe(403);
  await expect(phone.getByRole('heading', { level: 1 })).toHaveText('Not yours to do');
  await Promise.all([office.close(), phone.close()]);
});
