import fs from 'node:fs';
import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { complaintsOf, stateOf } from './person';

test.use({ storageState: stateOf('planner') });
// What one confirms of a column the site remembers for the next.
test.describe.configure({ mode: 'default' });

const HEAD = 'Tag;Area;Service;Held by;Motor number;Frame;Power kW;rpm;Volts;Remark';
const good = (n: number) => `IMP-${n};Hall Ø;Rinse ${n};foot;IMP-M-${n};132S;5,5;1455;400;kept dry`;
const file = (name: string, ...rows: string[]) => ({
  name,
  mimeType: 'text/csv',
  // As a western spreadsheet program saves it.
  buffer: Buffer.from(`${[HEAD, ...rows].join('\r\n')}\r\n`, 'latin1'),
});

async function send(page: Page, sent: ReturnType<typeof file>) {
  await page.goto('/imports');
  await page.getByLabel('Sets with their motors').check();
  await page.getByLabel('File').setInputFiles(sent);
  await page.getByRole('button', { name: 'Read the file' }).click();
  await expect(page.getByRole('button', { name: 'Look at every row' })).toBeVisible();
}

test('a list is imported: found, confirmed, looked at, written; what is refused is mended; all is taken back', async ({
  page,
}) => {
  const complaints = complaintsOf(page);
  await send(page, file('plates.csv', good(1), good(2), good(3).replace('5,5', '5,5,5')));
  await expect(page.locator('#content .kv')).toContainText('Windows-1252');
  await expect(page.locator('#content .kv')).toContainText('semicolon');
  await expect(page.locator('#content .kv')).toContainText('comma: 5,5');
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  await page.getByLabel('What column J is').selectOption('');
  await page.getByRole('button', { name: 'Look at every row' }).click();
  await expect(page.getByText('Waits for your word')).toBeVisible();
  await expect(page.getByRole('row', { name: /IMP-1 New/ })).toContainText('Service Rinse 1');
  await expect(page.getByRole('row', { name: /IMP-3 Refused/ })).toContainText('5,5,5');
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);

  const download = page.waitForEvent('download');
  await page.getByRole('link', { name: 'CSV', exact: true }).click();
  const refused = fs.readFileSync(await (await download).path(), 'utf8');
  expect(refused).toContain('5,5,5');

  await page.getByRole('button', { name: 'Write 2 rows into the register' }).click();
  await expect(page.getByText('In the register')).toBeVisible();
  await page.getByRole('link', { name: 'IMP-1' }).click();
  await page.waitForURL('**/sets/IMP-1');
  await expect(page.getByText('Rinse 1')).toBeVisible();
  await expect(page.getByText('Hall Ø')).toBeVisible();

  // The refused rows, mended, are a file of their own; the columns are as they were confirmed.
  await page.goto('/imports');
  await page.getByLabel('File').setInputFiles({
    name: 'mended.csv',
    mimeType: 'text/csv',
    buffer: Buffer.from(refused.replace('5,5,5', '5,5')),
  });
  await page.getByRole('button', { name: 'Read the file' }).click();
  await expect(page.getByLabel('What column J is')).toHaveValue('');
  await page.getByRole('button', { name: 'Look at every row' }).click();
  await page.getByRole('button', { name: 'Write one row into the register' }).click();
  await expect(page.getByText('In the register')).toBeVisible();

  await send(page, file('plates.csv', good(1), good(2), good(3)));
  await page.getByRole('button', { name: 'Look at every row' }).click();
  await expect(page.getByText('Nothing of it is new')).toBeVisible();

  for (const name of ['mended.csv', 'plates.csv']) {
    await page.goto('/imports');
    await page
      .getByRole('listitem')
      .filter({ hasText: name })
      .filter({ hasText: 'In the register' })
      .getByRole('link')
      .click();
    await page.getByRole('button', { name: /^Take back all/ }).click();
    await expect(page.getByText('Taken back', { exact: true })).toBeVisible(); // not “Being taken back”
  }
  await page.goto('/sets?q=IMP-1');
  await expect(page.getByText('No set is like this.')).toBeVisible();
  expect(complaints).toEqual([]);
});

test('what is no list is refused in words, and an export is one', async ({ page }) => {
  await page.goto('/imports');
  await page.getByLabel('File').setInputFiles({
    name: 'plate.png',
    mimeType: 'image/png',
    buffer: Buffer.from([0x89, 0x50, 0x4e, 0x47, 0, 0, 0, 1]),
  });
  await page.getByRole('button', { name: 'Read the file' }).click();
  await expect(page.getByText('Failed', { exact: true })).toBeVisible();
  await expect(page.locator('.problem-list')).toContainText(/\.$/);
  await page.goto('/sets?q=pectin');
  const download = page.waitForEvent('download');
  await page.getByRole('link', { name: 'XLSX' }).click();
  const path = await (await download).path();
  await page.goto('/imports');
  await page
    .getByLabel('File')
    .setInputFiles({ name: 'sets.xlsx', mimeType: 'application/octet-stream', buffer: fs.readFileSync(path) });
  await page.getByRole('button', { name: 'Read the file' }).click();
  await page.getByRole('button', { name: 'Look at every row' }).click();
  await expect(page.getByText('Nothing of it is new')).toBeVisible();
});

test.describe('without script', () => {
  test.use({ javaScriptEnabled: false });
  test('a file is sent, its columns are confirmed, and the page keeps up by itself', async ({ page }) => {
    await page.goto('/imports');
    await page.getByLabel('File').setInputFiles(file('plain.csv', good(11)));
    await page.getByRole('button', { name: 'Read the file' }).click();
    await expect(page.getByRole('button', { name: 'Look at every row' })).toBeVisible();
    await page.getByRole('button', { name: 'Look at every row' }).click();
    await expect(page.getByText('Waits for your word')).toBeVisible();
    await page.getByRole('button', { name: 'Stop this import' }).click();
    await expect(page.getByText('Stopped')).toBeVisible();
  });
});
