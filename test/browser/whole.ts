import AxeBuilder from '@axe-core/playwright';
import { expect, type Page } from '@playwright/test';

/** Nothing stands past the screen's edge, and axe finds nothing. */
export async function isWhole(page: Page, what: string) {
  const over = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
  expect(over, `${what} is wider than the screen`).toBeLessThanOrEqual(0);
  expect((await new AxeBuilder({ page }).analyze()).violations, what).toEqual([]);
}
