import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { shelfCandidates } from './candidates';
import { jobSetOf } from './own-sets';
import { complaintsOf } from './person';

/** The longest sheets of the demonstration, most of them of a motor that does not fit: drives, many checks, many figures. */
const LONG = [
  ['SK-107', 'M-0220'],
  ['BG-106', 'M-0220'],
  ['SK-105', 'M-0220'],
  ['BG-201', 'M-0512'],
  ['SL-108', 'M-0249'],
] as const;

/** Pages of a PDF as its page objects count them. */
const pagesOf = (pdf: Buffer) => (pdf.toString('latin1').match(/\/Type\s*\/Page[^s]/g) ?? []).length;

async function isAccessible(page: Page): Promise<void> {
  const { violations } = await new AxeBuilder({ page }).analyze();
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
}

test('the job sheet prints on two pages at most, A4 and Letter, with every step and room to write', async ({
  page,
}) => {
  test.slow();
  for (const [tag, motor] of LONG) {
    await page.goto(`/sets/${tag}/job/${motor}`);
    await expect(page.getByText('Isolate, lock out and prove dead')).toHaveCount(1);
    await expect(page.getByText('Bedplate proposes; a competent person decides')).toHaveCount(1);
    await expect(page.getByText('Done by, date')).toHaveCount(1);
    await expect(page.getByText(/diagram/).first()).toBeVisible();
    for (const format of ['A4', 'Letter'] as const)
      expect(pagesOf(await page.pdf({ format, preferCSSPageSize: false })), `${tag} ${format}`).toBeLessThanOrEqual(2);
  }
});

test('checks are filled with the swap, a current out of its band stands at the set, and a later one clears it', async ({
  page,
}, info) => {
  const complaints = complaintsOf(page);
  test.slow(); // it is looked at by axe four times
  const tag = jobSetOf(info.project.name);
  const [best] = await shelfCandidates(page, tag);
  expect(best, 'the demonstration has a spare for this set').toBeDefined();
  await page.goto(`/sets/${tag}/swap/${best}`);
  await isAccessible(page);
  await page.getByText('Bearing', { exact: true }).click();
  await page.getByText('To repair', { exact: true }).click();
  await page.getByLabel('Isolate, lock out and prove dead').check();
  await page.getByLabel('It turns the right way').check();
  await page.getByLabel('Insulation').fill('2');
  await expect(page.getByText(/Below 5 MΩ: do not put it to power/)).toBeVisible();
  for (const [line, amps] of [
    ['L1', '330'],
    ['L2', '290'],
    ['L3', '340'],
  ] as const)
    await page.getByLabel(line, { exact: true }).fill(amps);
  // 33, 29 and 34 A are uneven by 9.4 %: an instrument's manual; ten times as much is as uneven.
  await expect(page.getByText('Mean 320 A, uneven by 9.4 %')).toBeVisible();
  await expect(page.getByText(/Above the plate’s .* stop it and find why/)).toBeVisible();
  await isAccessible(page);
  await page.getByLabel('Note').fill('Read by hand.');
  await page.getByRole('button', { name: 'Record the swap' }).click();

  await expect(page.getByText('Swap, as recorded')).toBeVisible();
  await expect(page.getByText('L1 330, L2 290, L3 340')).toBeVisible();
  await expect(page.getByText(/Above the plate’s/)).toBeVisible();
  await isAccessible(page);
  await page.getByRole('link', { name: 'To the set' }).click();
  const open = page.locator('section', { has: page.getByRole('heading', { name: 'Open since the last swap' }) });
  await expect(open.getByText('Running current')).toBeVisible();
  await expect(open.getByText('Insulation resistance')).toBeVisible();

  await open.getByRole('link', { name: 'Read again' }).click();
  const expected = await page.getByText(/expect \d/).textContent();
  const amps = /expect ([\d.]+) A/.exec(String(expected))?.[1];
  if (amps === undefined) throw new Error(`no current is predicted at ${tag}: ${expected}`);
  await page.getByLabel('Insulation').fill('250');
  for (const line of ['L1', 'L2', 'L3']) await page.getByLabel(line, { exact: true }).fill(amps);
  await isAccessible(page);
  await page.getByRole('button', { name: 'Add the readings' }).click();
  await expect(page.getByText('250 MΩ')).toBeVisible();
  await page.getByRole('link', { name: 'To the set' }).click();
  await expect(page.getByRole('heading', { name: 'History' })).toBeVisible();
  await expect(open).toHaveCount(0);
  expect(complaints).toEqual([]);
});

test('the leads of a known winding are drawn, and said in the same words', async ({ page }) => {
  await page.goto('/sets/SK-107/job/M-0220');
  // Six leads in delta: a trade association's handbook and a motor shop's table (two texts).
  const sentence =
    'Leads for 400 V, delta: L1 to T1 (U1) and T6 (W2); L2 to T2 (V1) and T4 (U2); L3 to T3 (W1) and T5 (V2).';
  await expect(page.getByRole('img', { name: sentence })).toBeVisible();
  await expect(page.getByText(sentence, { exact: true })).toBeVisible();
  await expect(page.getByText('The diagram on the plate or in the terminal box decides.')).toBeVisible();
  await isAccessible(page);
});
