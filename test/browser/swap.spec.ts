import { expect, test } from '@playwright/test';
import { shelfCandidates } from './candidates';
import { ownSetsOf, REFUSED } from './own-sets';
import { complaintsOf, stateOf } from './person';

test('from a misspelt tag to the record: find, set, list, candidate, drawing, swap, history', async ({
  page,
}, info) => {
  const tag = ownSetsOf(info.project.name).whole;
  const complaints = complaintsOf(page);
  await page.goto('/');
  await page.getByRole('searchbox').fill(tag.replace('0', 'O').replace('-', ' '));
  await page.getByRole('button', { name: 'Find' }).click();
  await page.getByRole('link', { name: tag, exact: true }).click();
  await expect(page.getByRole('heading', { level: 1, name: tag })).toBeVisible();
  await page.getByRole('link', { name: 'What can go in?' }).click();
  await expect(page.getByRole('heading', { name: 'To buy' })).toBeVisible();

  const [best] = await shelfCandidates(page, tag);
  expect(best, 'the demonstration has a spare for this set').toBeDefined();
  await page.getByRole('link', { name: best as string, exact: true }).click();
  await expect(page.getByRole('img', { name: new RegExp(`Side view, to scale: ${best}`) })).toBeVisible();
  await expect(page.getByText('Isolate, lock out and prove dead')).toHaveCount(1);
  await page.getByRole('link', { name: 'Record the swap' }).click();

  await page.getByText('Bearing', { exact: true }).click();
  await page.getByText('To repair', { exact: true }).click();
  for (const box of await page.getByRole('group', { name: 'Work done' }).getByRole('checkbox').all()) await box.check();
  await page.getByLabel('Insulation').fill('550');
  await page.getByLabel('Note').fill('Grease hard.\nDrive-end bearing dry.');
  await page.getByRole('button', { name: 'Record the swap' }).click();

  await expect(page.getByText('Swap, as recorded')).toBeVisible();
  await expect(page.getByText('550 MΩ')).toBeVisible();
  await page.getByRole('link', { name: 'To the set' }).click();
  const history = page.getByRole('listitem').filter({ hasText: `${best}\u00a0in` });
  await expect(history.first()).toContainText('Bearing');
  expect(complaints).toEqual([]);
});

test.describe('without script', () => {
  test.use({ javaScriptEnabled: false });

  test('a refused form keeps what was typed, and the mended one is recorded', async ({ page }, info) => {
    const tag = ownSetsOf(info.project.name).without;
    const [best] = await shelfCandidates(page, tag);
    await page.goto(`/sets/${tag}/swap/${best}`);
    await page.getByLabel('Insulation').fill('plenty');
    await page.getByLabel('Note').fill('kept <b>as typed</b>');
    await page.getByText('To scrap', { exact: true }).click();
    await page.getByRole('button', { name: 'Record the swap' }).click();

    await expect(page.getByRole('alert')).toContainText('2 things are not right yet');
    await expect(page.getByLabel('Insulation')).toHaveValue('plenty');
    await expect(page.getByLabel('Note')).toHaveValue('kept <b>as typed</b>');
    await expect(page.getByLabel('To scrap')).toBeChecked();

    await page.getByText('Winding', { exact: true }).click();
    await page.getByLabel('Insulation').fill('0,9');
    await page.getByRole('button', { name: 'Record the swap' }).click();
    await expect(page.getByText('0.9 MΩ')).toBeVisible();
    await expect(page.getByText('kept <b>as typed</b>')).toBeVisible();
  });
});

test('of two who fill one set at once, one is told who was first, with all that was typed', async ({
  browser,
}, info) => {
  const tag = ownSetsOf(info.project.name).race;
  const [one, two] = await Promise.all([
    browser.newPage({ storageState: stateOf('technician') }),
    browser.newPage({ storageState: stateOf('planner') }),
  ]);
  const [best, next] = await shelfCandidates(one, tag);
  await one.goto(`/sets/${tag}/swap/${best}`);
  await two.goto(`/sets/${tag}/swap/${next ?? best}`);
  for (const page of [one, two]) {
    await page.getByText('Bearing', { exact: true }).click();
    await page.getByText('To repair', { exact: true }).click();
    await page.getByLabel('Note').fill('greased by hand');
  }
  await Promise.all([one, two].map((page) => page.getByRole('button', { name: 'Record the swap' }).click()));
  for (const page of [one, two]) await expect(page.getByText(/Swap, as recorded|Somebody was first/)).toBeVisible();
  const isFirst = await one.getByText('Swap, as recorded').isVisible();
  const [winner, loser] = isFirst ? [one, two] : [two, one];
  await expect(winner.getByText('Swap, as recorded')).toBeVisible();
  await expect(loser.getByText('Somebody was first.')).toBeVisible();
  await expect(loser.getByText(isFirst ? /Tove Marsk has put/ : /Ansel Brook has put/)).toBeVisible();
  await expect(loser.getByText('greased by hand')).toBeVisible();
  await expect(loser.getByRole('link', { name: 'What can go in now?' })).toBeVisible();
  await Promise.all([one.close(), two.close()]);
});

test('wrong quantities are refused, each by its name, and stay in their fields', async ({ page }) => {
  const [best] = await shelfCandidates(page, REFUSED);
  await page.goto(`/sets/${REFUSED}/swap/${best}`);
  const typed = { Insulation: '-5', 'Overload set to': '0', 'Shims under its feet now': '1e9' };
  for (const [label, value] of Object.entries(typed)) await page.getByLabel(label).fill(value);
  await page.getByText('Bearing', { exact: true }).click();
  await page.getByText('To repair', { exact: true }).click();
  await page.getByRole('button', { name: 'Record the swap' }).click();
  const alert = page.getByRole('alert').filter({ hasText: 'not right yet' });
  await expect(alert.getByRole('listitem')).toHaveCount(3);
  for (const [label, value] of Object.entries(typed)) {
    await expect(page.getByLabel(label)).toHaveValue(value);
    await expect(page.getByLabel(label)).toHaveAttribute('aria-invalid', 'true');
  }
  await alert.getByRole('link', { name: /^Shims/ }).click();
  await expect(page.getByLabel('Shims under its feet now')).toBeInViewport();
});
