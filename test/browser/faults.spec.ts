import { expect, test } from '@playwright/test';
import { shelfCandidates } from './candidates';
import { faultSetsOf } from './own-sets';
import { complaintsOf } from './person';
import { platePhoto } from './plate-photo';
import { isWhole } from './whole';

for (const javaScriptEnabled of [true, false])
  test.describe(javaScriptEnabled ? 'with script' : 'without script', () => {
    test.use({ javaScriptEnabled });

    test('it has failed: two touches from the set’s page to what can go in', async ({ page }, info) => {
      const complaints = complaintsOf(page);
      const tag = faultSetsOf(info.project.name).quick;
      await page.goto(`/sets/${tag}`);
      await page.getByRole('link', { name: 'It has failed' }).click();
      await page.getByRole('button', { name: 'Tripped' }).click();

      await expect(page).toHaveURL(new RegExp(`/sets/${tag}/candidates\\?fault=`));
      await expect(page.getByRole('status')).toContainText('The fault is reported: Tripped');
      await expect(page.getByRole('heading', { name: 'What can go in?' })).toBeVisible();
      if (javaScriptEnabled) await isWhole(page, 'candidates after a fault');

      await page.goto(`/sets/${tag}`);
      await expect(page.locator('#open-faults')).toContainText(/Failed \d\d:\d\d, standing (under 1 min|\d+ min)/);
      if (javaScriptEnabled) await isWhole(page, 'a set that has failed');
      await page.getByRole('link', { name: 'It has failed' }).click();
      await expect(page.getByText('One is open already.')).toBeVisible();
      expect(complaints).toEqual([]);
    });
  });

test('with words and a photograph, shown with the fault; put right where it stands, with its time', async ({
  page,
}, info) => {
  const tag = faultSetsOf(info.project.name).repaired;
  const words = `Growls, ${info.project.name} ${crypto.randomUUID().slice(0, 8)}`;
  await page.goto(`/sets/${tag}/failed`);
  await page.getByText('Several, in words, or with a photograph').click();
  await page.getByLabel('Noise or shaking').check();
  await page.getByLabel('Too hot').check();
  await page.getByLabel('What is wrong?').fill(words);
  await page
    .getByLabel('Or a photograph that is here already')
    .setInputFiles(await platePhoto(`F-${info.project.name}-${info.retry}`));
  await isWhole(page, 'the form of a fault');
  await page.getByRole('button', { name: 'Report, and see what can go in' }).click();
  await expect(page.getByText(`The fault is reported: Noise or shaking, too hot: ${words}`)).toBeVisible();
  await expect(page.getByText('The photograph is kept.')).toBeVisible();

  await page.getByRole('link', { name: 'Add a photograph' }).click();
  const thumb = page.locator('#photographs img').first();
  await expect.poll(() => thumb.evaluate((image: HTMLImageElement) => image.naturalWidth)).toBeGreaterThan(0);
  await isWhole(page, 'a fault');

  await page.getByText('It runs again').first().click();
  await page.getByRole('button', { name: 'It runs again' }).click();
  await expect(page.getByRole('alert').filter({ hasText: 'not right yet' })).toContainText('What was done');
  await page.getByLabel('What was done?').fill('Greased both bearings');
  await page.getByRole('button', { name: 'It runs again' }).click();
  await expect(page.getByText('put right where it stands')).toBeVisible();
  await expect(page.getByText('Greased both bearings')).toBeVisible();

  await page.goto('/faults');
  const line = page.getByRole('listitem').filter({ hasText: words });
  await expect(line).toContainText('under 1 min');
  await expect(line).toContainText('Greased both bearings');
  await isWhole(page, 'the faults');
  await page.goto(`/sets/${tag}`);
  await expect(page.locator('#open-faults')).toHaveCount(0);
  await expect(page.getByRole('listitem').filter({ hasText: words })).toContainText('Ran again');
});

test('a swap at the set closes what was open there', async ({ page }, info) => {
  const tag = faultSetsOf(info.project.name).swapped;
  await page.goto(`/sets/${tag}/failed`);
  await page.getByRole('button', { name: 'Seized' }).click();
  const [best] = await shelfCandidates(page, tag);
  expect(best, 'the demonstration has a spare for this set').toBeDefined();
  await page.goto(`/sets/${tag}/swap/${best}`);
  await page.getByText('Bearing', { exact: true }).click();
  await page.getByText('To repair', { exact: true }).click();
  await page.getByRole('button', { name: 'Record the swap' }).click();
  await expect(page.getByText('Swap, as recorded')).toBeVisible();
  await page.goto(`/sets/${tag}`);
  await expect(page.locator('#open-faults')).toHaveCount(0);
  await page.goto('/faults');
  const line = page.getByRole('listitem').filter({ hasText: tag });
  await expect(line.first()).toContainText('by a swap');
});
