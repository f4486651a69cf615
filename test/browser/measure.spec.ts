import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { complaintsOf, stateOf } from './person';

const found = (page: Page) => page.locator('#found');
const frameOf = (page: Page, name: string) =>
  page.locator('.frame-found', { has: page.getByRole('link', { name, exact: true }) });

test('a technician measures a motor and is told which frames it can be, and which they are not', async ({ page }) => {
  const complaints = complaintsOf(page);
  await page.goto('/frames');
  await page.getByRole('link', { name: 'Which frame is it? By a tape' }).click();
  await page.getByRole('textbox', { name: 'Shaft height' }).fill('113');
  await page.getByLabel('Holes across').fill('7 1/2 in');
  await page.getByRole('textbox', { name: 'Shaft diameter' }).fill('28');
  await page.getByLabel('None: it stands on feet alone').check();
  await page.getByRole('button', { name: 'Which frames can it be?' }).click();
  await expect(page).toHaveURL(/shaftHeightMm=113&holesAcrossMm=7\+1%2F2\+in/);
  // NEMA MG 1 4.4.1: 182T and 184T stand 4.50 in high, U 1.125 in. IEC 60072-1: 112 stands 112 mm high, D 28 mm.
  await expect(found(page)).toContainText('5 frames agree with all 3 readings: 112S; 112M; 112L; 182T; 184T.');
  const row = frameOf(page, '182T').getByRole('row', { name: /Shaft height\s+113\s+114\.3\s+−1\.3 mm/ });
  await expect(row).toHaveCount(1);
  await expect(frameOf(page, '182T')).toContainText('Not measured yet: holes along,');
  await page.getByText('And 1 more').click();
  await expect(frameOf(page, '184T')).toHaveCount(1);
  await expect(page.locator('#twins')).toContainText('1 1/8 in is 28.575 mm, not 28 mm: 0.575 mm apart');
  await expect(found(page)).toContainText('Measure next');
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);

  // A caliper tells 28 mm from 1 1/8 in, and the address can be handed on.
  await page.getByLabel('A caliper at shaft and rims').check();
  await page.getByRole('textbox', { name: 'Shaft height' }).fill('112.5');
  await page.getByRole('button', { name: 'Which frames can it be?' }).click();
  await expect(page.locator('#twins')).toContainText('It is not NEMA');
  await page.goto(page.url());
  await expect(frameOf(page, '112M')).toContainText('Not measured yet');
  await page.getByText(/^It is not: the nearest/).click();
  await expect(frameOf(page, '182T').getByRole('row', { name: /Shaft diameter does not agree/ })).toBeVisible();
  // A technician enters no motors.
  await expect(page.getByRole('link', { name: /^Enter a motor/ })).toHaveCount(0);
  expect(complaints).toEqual([]);
});

test('what is no length is told at its field, and the rest is judged', async ({ page }) => {
  await page.goto('/frames/measure?shaftHeightMm=wide&holesAcrossMm=216&holesAlongMm=140');
  await expect(page.getByRole('alert').first()).toContainText('Shaft height: “wide”');
  await expect(page.getByRole('textbox', { name: 'Shaft height' })).toHaveValue('wide');
  await expect(frameOf(page, '132S')).toHaveCount(1);
});

test.describe('a motor without a plate, without script', () => {
  test.use({ javaScriptEnabled: false, storageState: stateOf('planner') });

  test('is walked round step by step, and leads to its form with what is known and what is not', async ({
    page,
  }, info) => {
    await page.goto('/sets/OR-115');
    await page.getByRole('link', { name: 'Its plate is gone or wrong?' }).click();
    await expect(page.getByText('isolate, lock off and prove dead')).toBeVisible();
    // From the store it is no motor of a set.
    await page.goto('/stores');
    await page.getByRole('link', { name: 'No plate? Step by step' }).click();
    const next = (words: string) => page.getByRole('button', { name: words }).click();
    await next('Next: feet');
    for (const [label, text] of [
      ['Shaft height', '132'],
      ['Holes across', '216'],
      ['Holes along', '140'],
    ] as const)
      await page.getByLabel(label).fill(text);
    await next('Next: shaft');
    await expect(page.getByText(/^Left so far: .*132S.*213T/)).toBeVisible();
    await page.getByRole('textbox', { name: 'Shaft diameter' }).fill('38');
    await page.getByLabel('Shaft length').fill('long');
    await next('Next: face');
    await expect(page.getByText('Shaft length: “long”')).toBeVisible();
    await page.getByLabel('None: it stands on feet alone').check();
    await next('Back: shaft');
    await expect(page.getByRole('textbox', { name: 'Shaft diameter' })).toHaveValue('38');
    await page.getByLabel('Shaft length').fill('80');
    await next('Next: face');
    await expect(page.getByLabel('None: it stands on feet alone')).toBeChecked();
    await next('Next: leads');
    await page.getByLabel('6', { exact: true }).check();
    await next('Next: speed');
    await page.getByLabel('Speed under load').fill('1450');
    await page.getByLabel('Frequency at that moment').fill('50');
    await next('Next: while it ran');
    await page.getByLabel('Volts between lines').fill('400');
    await page.getByLabel('Amps').fill('9');
    await next('Next: outside and mass');
    await page.getByLabel('Closed, with a fan').check();
    await page.getByLabel('Mass').fill('62');
    await next('What is known');
    await expect(page.getByText('Frame 132S, as far as it was measured.')).toBeVisible();
    // 120 f / p; √3 U I.
    await expect(page.getByText('120 × 50 / 4 = 1500 rpm')).toBeVisible();
    await expect(page.getByText('= 6.24 kVA')).toBeVisible();
    await expect(page.getByText(/^Power, volts, amps.*nothing outside tells them/)).toBeVisible();
    expect((await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)) <= 0).toBe(true);

    await page.getByRole('link', { name: 'Enter the motor with what is known' }).click();
    await expect(page.getByText(/^Filled in from what was found: frame, poles, leads/)).toBeVisible();
    await expect(page.getByLabel('Frame', { exact: true })).toHaveValue('132S');
    await expect(page.getByRole('textbox', { name: 'Shaft diameter' })).toHaveValue('38 mm');
    await expect(page.getByLabel('Note')).toHaveValue('No plate. Measured while it ran: 400 V, 9 A, 1450 rpm, 50 Hz.');
    const number = `W-${info.project.name}-${info.retry}`;
    await page.getByLabel('Plant number').fill(number);
    await page.getByLabel('Place').selectOption({ label: 'at repair' });
    await page.getByRole('button', { name: 'Save' }).click();
    await expect(page.getByText('Saved.')).toBeVisible();
    await expect(page.getByText('132S').first()).toBeVisible();

    // Found out later of a motor that is in the register: it fills only what is not known.
    await page.goto(`/motors/no-plate?step=found&motor=${number}&leads=12`);
    const write = page.getByRole('link', { name: `Write it to ${number}, where nothing stands yet` });
    await expect(write).toHaveAttribute('href', new RegExp(`/motors/${number}/edit\\?leads=12`));
    await page.goto(`/motors/${number}/edit?leads=12&serviceFactor=1.15`);
    await expect(page.getByText('Filled in from what was found: service factor.')).toBeVisible();
    await expect(page.getByLabel('Leads')).toHaveValue('6');
    await page.getByRole('button', { name: 'Save' }).click();
    await expect(page.getByText('Saved.')).toBeVisible();
  });
});
