import type { Page } from '@playwright/test';

/**
 * What is lost at 320 px, which is 400 % of 1280 (WCAG 1.4.10): a page that scrolls sideways; a part that scrolls sideways and
 * cannot be reached by keys; text that is cut, but for one that ends in an ellipsis and leads to its whole.
 */
export const cut = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const found: string[] = [];
    const wide = document.scrollingElement?.scrollWidth ?? 0;
    const name = (one: Element) => one.outerHTML.slice(0, 140);
    if (wide > innerWidth) {
      const past = [...document.body.querySelectorAll('*')].filter(
        (one) => one.getBoundingClientRect().right > innerWidth + 1 && one.closest('.vh') === null,
      );
      found.push(`${wide} px wide: ${past.slice(0, 3).map(name).join(' | ')}`);
    }
    for (const one of document.body.querySelectorAll('*')) {
      if (!one.checkVisibility() || one.closest('svg, .vh, .skip') !== null || one.clientWidth === 0) continue;
      const { overflowX, overflowY, textOverflow, webkitLineClamp } = getComputedStyle(one);
      const isInReach =
        (textOverflow === 'ellipsis' || webkitLineClamp !== 'none') && one.closest('a, [title]') !== null;
      const isOver = one.scrollWidth > one.clientWidth + 1;
      const isTall = one.scrollHeight > one.clientHeight + 1;
      const hasText = (one.textContent ?? '').trim() !== '';
      if (!hasText || one.matches('textarea, select, input')) continue;
      if (isOver && overflowX === 'auto') {
        const inside = one.querySelector('a[href], button, input, select, summary');
        if ((one as HTMLElement).tabIndex < 0 && inside === null) found.push(`not reached by keys: ${name(one)}`);
      }
      const isHidden = (isOver && /hidden|clip/.test(overflowX)) || (isTall && /hidden|clip/.test(overflowY));
      if (isHidden && !isInReach) found.push(`cut: ${name(one)}`);
    }
    return found;
  });
