import type { Page } from '@playwright/test';

/**
 * What is pressed and smaller than 44 x 44 CSS px (WCAG 2.5.5). A control counts with what presses it: its label, or the row
 * that its link is stretched over. The clause excepts a link in a sentence: here only one whose own block of text has other
 * words beside all its links.
 */
export const smallTargets = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const LEAST = 43.5; // a box of 44 px may be drawn at a fraction of one
    const pressed = 'a[href], button, input:not([type=hidden]), select, textarea, summary, [role=button]';
    const shown = (one: Element) => one.checkVisibility({ visibilityProperty: true });
    const isLarge = ({ width, height }: { width: number; height: number }) => width >= LEAST && height >= LEAST;

    /** A link stretched over its row by a pseudo-element without a place of its own but the row's. */
    const stretched = (one: Element): Element | null => {
      const { content, position, inset } = getComputedStyle(one, '::after');
      if (content === 'none' || position !== 'absolute' || inset !== '0px') return null;
      for (let row = one.parentElement; row !== null; row = row.parentElement)
        if (getComputedStyle(row).position !== 'static') return row;
      return null;
    };
    const inSentence = (one: Element): boolean => {
      if (one.tagName !== 'A' || getComputedStyle(one).display !== 'inline') return false;
      let block = one.parentElement;
      while (block !== null && getComputedStyle(block).display.startsWith('inline')) block = block.parentElement;
      if (block === null) return false;
      const rest = block.cloneNode(true) as Element;
      for (const link of rest.querySelectorAll('a, button, svg, .vh')) link.remove();
      return /\p{L}{2,}/u.test(rest.textContent ?? '');
    };
    const labels = (one: Element) => [...((one as HTMLInputElement).labels ?? [])];
    return [...document.querySelectorAll(pressed)]
      .filter((one) => shown(one) && !one.matches('.skip') && !inSentence(one))
      .filter((one) => {
        const boxes = [one, ...labels(one), stretched(one)].filter((box) => box !== null);
        return !boxes.some((box) => isLarge(box.getBoundingClientRect()));
      })
      .map((one) => {
        const { width, height } = one.getBoundingClientRect();
        return `${Math.round(width)} x ${Math.round(height)}: ${one.outerHTML.slice(0, 140)}`;
      });
  });
