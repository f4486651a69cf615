import AxeBuilder from '@axe-core/playwright';
import { expect, test } from '@playwright/test';
import { enterMotor } from './enter-motor';
import { stateOf } from './person';

test.use({ storageState: stateOf('planner') });

const PLATE = ['FRAME 213T', 'HP 7½  VOLTS 230/460', 'AMPS 19.4/9.7 RPM 1755 HZ 60', 'ENCL TEFC SF 1.15', 'PH 3'].join(
  '\n',
);

/** A number that no other run of the test enters. */
const numberFor = (project: string, what: string) => `T-${project}-${what}`;

test('a motor is entered from its plate as stamped, and the standard’s dimensions stand beside it at once', async ({
  page,
}, info) => {
  await page.goto('/motors/new');
  await page.getByLabel('What stands on the plate').fill(PLATE);
  await page.getByRole('button', { name: 'Read it into the fields' }).click();
  await expect(page.getByLabel('Frame', { exact: true })).toHaveValue('213T');
  const beside = page.locator('.beside');
  await expect(beside.getByRole('row', { name: /7\.5 hp\s+460/ })).toBeVisible();
  // NEMA MG 1 Table 4-2: D of the 210 frames is 5.25 in, 133.35 mm.
  await expect(beside.getByRole('row', { name: /Shaft height\s+133\.35/ })).toBeVisible();
  await page.getByLabel('Frame', { exact: true }).fill('184T');
  await expect(beside.getByRole('row', { name: /Shaft height\s+114\.3/ })).toBeVisible();
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(page.getByRole('alert').first()).toContainText('not right yet');
  await page.getByLabel('Plant number').fill(numberFor(info.project.name, 'entered'));
  await page.getByLabel('Place').selectOption({ label: 'at repair' });
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(page.getByText('Saved.')).toBeVisible();
  await expect(page.getByText('184T').first()).toBeVisible();
});

test('R3 two people edit one motor: what one did not touch is taken over, what both touched shows both', async ({
  page,
  browser,
}, info) => {
  const number = numberFor(info.project.name, 'both');
  await enterMotor(page, number, PLATE);
  await page.goto(`/motors/${number}/edit`);
  const other = await browser.newContext({ storageState: stateOf('administrator') });
  const theirs = await other.newPage();
  await theirs.goto(`/motors/${number}/edit`);
  await theirs.getByLabel('Maker').fill('Brandal');
  await theirs.getByLabel('Serial number').fill('0042');
  await theirs.getByRole('button', { name: 'Save' }).click();
  await expect(theirs.getByText('Saved.')).toBeVisible();
  await other.close();
  await page.getByLabel('Maker').fill('Holm');
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(page.getByText('Somebody else has saved in between')).toBeVisible();
  await expect(page.getByText('Somebody else has saved “Brandal” here.')).toBeVisible();
  await expect(page.getByLabel('Maker')).toHaveValue('Holm');
  await expect(page.getByLabel('Serial number')).toHaveValue('0042');
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(page.getByText('Saved.')).toBeVisible();
  await expect(page.getByText('Holm, 0042')).toBeVisible();
  await page.getByRole('button', { name: 'Undo this change' }).click();
  await expect(page.getByText('Undone')).toBeVisible();
  await expect(page.getByText('Brandal, 0042')).toBeVisible();
});

test('the forms work without script', async ({ browser }, info) => {
  const context = await browser.newContext({ storageState: stateOf('planner'), javaScriptEnabled: false });
  const page = await context.newPage();
  await enterMotor(page, numberFor(info.project.name, 'plain'), PLATE);
  await page.getByRole('link', { name: 'Edit' }).click();
  await page.getByLabel('Poles').fill('four');
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(page.getByText('Poles: “four” is not a figure.').first()).toBeVisible();
  await page.getByLabel('Poles').fill('6');
  await page.getByRole('button', { name: 'Read it back' }).click();
  await expect(page.getByText('Read as it stands beside the form')).toBeVisible();
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(page.getByText('Saved.')).toBeVisible();
  await page.getByRole('button', { name: 'Undo this change' }).click();
  await expect(page.getByText('Undone')).toBeVisible();
  await context.close();
});
