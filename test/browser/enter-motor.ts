import { expect, type Page } from '@playwright/test';

/** Enters a motor as a planner does: the plate read into the fields, a number, a place. */
export async function enterMotor(page: Page, number: string, plate: string) {
  await page.goto('/motors/new');
  await page.getByLabel('What stands on the plate').fill(plate);
  await page.getByRole('button', { name: 'Read it into the fields' }).click();
  await page.waitForURL(/plate=/); // the fields are made anew
  await page.getByLabel('Plant number').fill(number);
  await page.getByLabel('Place').selectOption({ label: 'at repair' });
  await page.getByRole('button', { name: 'Save' }).click();
  await expect(page.getByText('Saved.')).toBeVisible();
}
