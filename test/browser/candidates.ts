import { expect, type Page } from '@playwright/test';

/** The plant numbers that could go in from a shelf, best first. */
export async function shelfCandidates(page: Page, tag: string): Promise<string[]> {
  await page.goto(`/sets/${encodeURIComponent(tag)}/candidates?from=shelf`);
  await expect(page.getByRole('heading', { name: 'What can go in?' })).toBeVisible();
  const section = page.locator('section', { has: page.getByRole('heading', { name: 'On a shelf or on order' }) });
  if (await section.getByText('Nothing on the shelves fits.').isVisible()) return [];
  return section.getByRole('listitem').getByRole('heading').allTextContents();
}
