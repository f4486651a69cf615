import AxeBuilder from '@axe-core/playwright';
import { expect, test } from '@playwright/test';
import { complaintsOf, stateOf } from './person';
import { platePhoto } from './plate-photo';

/** Of the demonstration, and looked at by no other test. */
const SET = '/sets/OR-115';

test.describe('without script', () => {
  test.use({ javaScriptEnabled: false });

  test('a technician sends a photograph of a set, and is told what became of it', async ({ page }, info) => {
    const photo = await platePhoto(`P-${info.project.name}-plain-${info.retry}`);
    await page.goto(SET);
    await page.getByText('Send a photograph').click();
    await expect(page.getByLabel('With the camera')).toBeVisible({ visible: info.project.name === 'phone' });
    await page.getByLabel('Or one that is here already').setInputFiles(photo);
    await page.getByLabel('What it shows').fill('Base with <b>its</b> bolts');
    await page.getByRole('button', { name: 'Keep the photograph' }).click();
    await expect(page).toHaveURL(/\/sets\/OR-115\?picture=kept#photographs$/);
    await expect(page.getByRole('status')).toHaveText('The photograph is kept.');
    const kept = page.locator('#photographs').getByRole('link', { name: 'Base with <b>its</b> bolts' }).first();
    await expect(kept).toBeVisible();
    // The smallest that a browser takes for text, called a picture.
    await page.getByText('Send a photograph').click();
    const drawing = { name: 'plate.jpg', mimeType: 'image/jpeg', buffer: Buffer.from('<svg onload="alert(1)"/>') };
    await page.getByLabel('Or one that is here already').setInputFiles(drawing);
    await page.getByRole('button', { name: 'Keep the photograph' }).click();
    await expect(page.getByRole('status')).toContainText('text or a drawing');
  });
});

test('S16 a photograph opens at its own address as a picture, in a sandbox', async ({ page }, info) => {
  const complaints = complaintsOf(page);
  await page.goto(SET);
  await page.getByText('Send a photograph').click();
  await page
    .getByLabel('Or one that is here already')
    .setInputFiles(await platePhoto(`P-${info.project.name}-own-${info.retry}`));
  await page.getByLabel('What it shows').fill('Own address');
  await page.getByRole('button', { name: 'Keep the photograph' }).click();
  await expect(page.getByRole('status')).toHaveText('The photograph is kept.');
  const thumb = page.locator('#photographs img').first();
  await expect.poll(() => thumb.evaluate((image: HTMLImageElement) => image.naturalWidth)).toBeGreaterThan(0);
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  // Of the picture's own page the browser complains, since nothing may run there, not even what it adds by itself.
  expect(complaints).toEqual([]);
  const opened = page.waitForResponse(/\/pictures\/[0-9a-f-]{36}$/);
  await page.locator('#photographs').getByRole('link', { name: 'Own address' }).first().click();
  const answer = await opened;
  expect(answer.headers()['content-type']).toBe('image/webp');
  expect(answer.headers()['content-security-policy']).toContain('sandbox');
});

test.describe('at the desk', () => {
  test.use({ storageState: stateOf('planner') });

  test('a photograph is retired, and a technician is not offered that', async ({ page, browser }, info) => {
    await page.goto('/motors/M-0145');
    await page.getByText('Send a photograph').click();
    const caption = `To be retired, ${info.project.name}`;
    await page
      .getByLabel('Or one that is here already')
      .setInputFiles(await platePhoto(`P-${info.project.name}-retired-${info.retry}`));
    await page.getByLabel('What it shows').fill(caption);
    await page.getByRole('button', { name: 'Keep the photograph' }).click();
    const line = page.locator('#photographs li', { hasText: caption });
    await line.getByText(/^Retire/).click();
    await line.getByRole('button', { name: 'Take it out of the list' }).click();
    await expect(page.getByRole('status')).toHaveText('The photograph is retired.');
    await expect(line).toHaveCount(0);
    const technician = await browser.newContext({ storageState: stateOf('technician') });
    const theirs = await technician.newPage();
    await theirs.goto(SET);
    await expect(theirs.locator('#photographs')).toBeVisible();
    await expect(theirs.locator('#photographs').getByText(/^Retire/)).toHaveCount(0);
    await technician.close();
  });
});
