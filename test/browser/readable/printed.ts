import type { Page } from '@playwright/test';

/** What would not print well: what stands past the paper, and what is not black or dark grey on white. */
export const misprinted = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const wide = document.scrollingElement?.scrollWidth ?? 0;
    const found = wide > innerWidth ? [`${wide} px wide on ${innerWidth}`] : [];
    const WHITE = ['rgba(0, 0, 0, 0)', 'rgb(255, 255, 255)'];
    const INKS = ['rgb(0, 0, 0)', 'rgb(51, 51, 51)'];
    for (const one of document.body.querySelectorAll('*')) {
      if (!one.checkVisibility() || one.closest('.vh, .skip') !== null) continue;
      const { backgroundColor, color, fill } = getComputedStyle(one);
      const says = [...one.childNodes].some(({ nodeType, data }: ChildNode & { data?: string }) => {
        return nodeType === Node.TEXT_NODE && (data ?? '').trim() !== '';
      });
      if (!says) continue;
      const ink = one instanceof SVGElement ? fill : color;
      if (!INKS.includes(ink)) found.push(`printed in ${ink}: ${one.outerHTML.slice(0, 120)}`);
      if (!WHITE.includes(backgroundColor)) found.push(`printed on ${backgroundColor}: ${one.outerHTML.slice(0, 120)}`);
    }
    return found;
  });
