import type { Page } from '@playwright/test';
import { noted } from './device';
import { tell } from './table';

/** The sum of layout shifts so far on the page, and each with what moved. */
export async function tellShifts(page: Page, what: string) {
  const { shifts } = await noted(page);
  const sum = shifts.reduce((total, { value }) => total + value, 0);
  tell(what, sum, '', 0);
  for (const { value, at, path, moved } of shifts)
    console.log(`      ${value.toFixed(4)} at ${at.toFixed(0)} ms on ${path}: ${moved.join(', ')}`);
}
