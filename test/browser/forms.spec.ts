import { expect, test } from '@playwright/test';
import { shelfCandidates } from './candidates';
import { isFree, ownSetsOf, REFUSED } from './own-sets';
import { stateOf } from './person';

test('a fault of blanks is refused and a told one stands on the page', async ({ page }, info) => {
  const words = `Trips after a minute, ${info.project.name}`;
  const report = page.getByRole('button', { name: 'Report, and see what can go in' });
  await page.goto('/sets/OR-113/failed');
  await page.getByText('Several, in words, or with a photograph').click();
  await page.getByLabel('What is wrong?').fill('   ');
  await report.click();
  await expect(page.getByText('say in a few words what is wrong')).toBeVisible();
  await page.getByLabel('What is wrong?').fill(words);
  await report.click();
  await expect(page.getByRole('status')).toContainText(words);
  await page.goto('/sets/OR-113');
  await expect(page.getByRole('link', { name: words }).first()).toBeVisible();
});

test('signed out over a filled form, nothing typed is lost', async ({ browser }) => {
  const context = await browser.newContext({ storageState: stateOf('technician') });
  const page = await context.newPage();
  const [best] = await shelfCandidates(page, REFUSED);
  await page.goto(`/sets/${REFUSED}/swap/${best}`);
  await page.getByText('Bearing', { exact: true }).click();
  await page.getByText('To repair', { exact: true }).click();
  await page.getByLabel('Note').fill('typed with gloves');
  const cookies = await context.cookies();
  await context.clearCookies();
  await page.getByRole('button', { name: 'Record the swap' }).click();
  await expect(page.getByRole('alert').filter({ hasText: 'no longer signed in' })).toBeVisible();
  await expect(page.getByLabel('Note')).toHaveValue('typed with gloves');
  await expect(page.getByLabel('To repair')).toBeChecked();
  await context.addCookies(cookies);
  await context.close();
});

test('a motor is taken from another set only when it is said that that set may stop', async ({ page }, info) => {
  const tag = ownSetsOf(info.project.name).taking;
  await page.goto(`/sets/${tag}/candidates?from=set`);
  const stopped = await page.getByText(/^Stops [A-Z]+-\d+/).allTextContents();
  const stops = stopped.map((words) => /[A-Z]+-\d+/.exec(words)?.[0] ?? '').find(isFree) ?? '';
  expect(stops, 'a set that no other test counts on').not.toBe('');
  const taken = page.locator('.cand').filter({ hasText: `Stops ${stops}` });
  const number = (await taken.first().getByRole('heading').textContent()) ?? '';
  await page.goto(`/sets/${tag}/swap/${number}`);
  await page.getByText('Winding', { exact: true }).click();
  await page.getByText('To scrap', { exact: true }).click();
  await page.getByRole('button', { name: 'Record the swap' }).click();
  await expect(page.getByRole('alert').filter({ hasText: 'not right yet' })).toContainText('may stop');
  await page.getByLabel(new RegExp(`^${stops}.*stops, and may$`)).check();
  const reading = page.getByLabel('Who decided that it goes in, and why?');
  if (await reading.isVisible()) await reading.fill('Nothing nearer');
  await page.getByRole('button', { name: 'Record the swap' }).click();
  await expect(page.getByText('Swap, as recorded')).toBeVisible();
  await page.goto(`/sets/${stops}`);
  await expect(page.getByText(`No motor`).first()).toBeVisible();
});
