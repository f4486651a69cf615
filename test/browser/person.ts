import { expect, type Page } from '@playwright/test';
import { demoPassword } from './demo-password';

export type Who = 'technician' | 'planner' | 'administrator';

/** Where people.setup.ts keeps a signed-in person's session. */
export const stateOf = (who: Who): string => `test-results/${who}.json`;

/** Fills the sign-in form and sends it. */
export async function signIn(page: Page, who: Who, password = demoPassword): Promise<void> {
  await page.getByLabel('E-mail').fill(`${who}@example.com`);
  await page.getByLabel('Password').fill(password);
  await page.getByRole('button', { name: 'Sign in' }).click();
  await expect(page).not.toHaveURL(/\/sign-in$/);
}

/** What the browser complains of, a blocked script above all. A page that is meant to be missing is no complaint. */
export function complaintsOf(page: Page): string[] {
  const complaints: string[] = [];
  page.on('console', (message) => {
    if (message.type() !== 'error' || /status of 404/.test(message.text())) return;
    complaints.push(`${message.text()} ${message.location().url}, on ${page.url()}`);
  });
  page.on('pageerror', (error) => complaints.push(error.message));
  return complaints;
}
