import type { Page } from '@playwright/test';

/** A date's parts and its calendar are stops of their own, which the page does not hear of. */
const STOPS_IN_A_DATE = 8;

interface Tabbed {
  all: Element[];
  seen: Element[];
  found: string[];
}

/**
 * What Tab does not do from the top of a page: reach everything that can have the focus, once, in the order of the page
 * (WCAG 2.1.1, 2.1.2, 2.4.3), show where it is (2.4.7, 2.4.13: an outline of at least 2 px), and not under the bar (2.4.11).
 */
export async function byKeys(page: Page): Promise<string[]> {
  const { count, dates } = await page.evaluate(watch);
  let pressed = 0;
  for (let seen = 0; seen < count && pressed < count + dates * STOPS_IN_A_DATE; ) {
    const more = Math.max(1, count - seen);
    for (let i = 0; i < more && pressed < count + dates * STOPS_IN_A_DATE; i += 1, pressed += 1)
      await page.keyboard.press('Tab');
    seen = await page.evaluate(() => (window as unknown as { tabbed: Tabbed }).tabbed.seen.length);
  }
  return page.evaluate(() => {
    const { all, seen, found } = (window as unknown as { tabbed: Tabbed }).tabbed;
    const name = (one: Element | undefined) => one?.outerHTML.slice(0, 120) ?? 'nothing';
    const at = all.findIndex((one, i) => seen[i] !== one);
    if (at < 0) return found;
    return [...found, `stop ${at + 1} of ${all.length} is ${name(seen[at])}, not ${name(all[at])}`];
  });
}

/** Runs in the page. Notes what gets the focus, and answers how much should. */
function watch() {
  const can = 'a[href], button, input:not([type=hidden]), select, textarea, summary, [tabindex]';
  const all = [...document.querySelectorAll<HTMLElement>(can)].filter((one) => {
    if (one.tabIndex < 0 || one.matches(':disabled') || !one.checkVisibility({ visibilityProperty: true }))
      return false;
    if (!(one instanceof HTMLInputElement) || one.type !== 'radio') return true;
    // Tab enters a group of radio buttons once: at the chosen one, else at the first.
    const group = [...document.querySelectorAll<HTMLInputElement>(`input[type=radio][name="${CSS.escape(one.name)}"]`)];
    const same = group.filter(({ form }) => form === one.form);
    return one === (same.find(({ checked }) => checked) ?? same[0]);
  });
  const tabbed: Tabbed = { all, seen: [], found: [] };
  const isDrawn = ({ outlineStyle, outlineWidth }: CSSStyleDeclaration) =>
    outlineStyle !== 'none' && Number.parseFloat(outlineWidth) >= 2;
  document.addEventListener('focusin', ({ target }) => {
    const one = target as Element;
    tabbed.seen.push(one);
    // A link that fills its row draws it round the row.
    if (!isDrawn(getComputedStyle(one)) && !isDrawn(getComputedStyle(one, '::after')))
      tabbed.found.push(`focus is not seen: ${one.outerHTML.slice(0, 120)}`);
  });
  // By the time that it leaves, what has the focus has been scrolled to.
  document.addEventListener('focusout', ({ target }) => {
    const one = target as Element;
    const bar = document.querySelector('.actions');
    if (bar === null || bar.contains(one)) return;
    const { top, bottom } = one.getBoundingClientRect();
    const over = bar.getBoundingClientRect();
    if (top >= over.top && bottom <= over.bottom) tabbed.found.push(`under the bar: ${one.outerHTML.slice(0, 120)}`);
  });
  Object.assign(window, { tabbed });
  (document.activeElement as HTMLElement | null)?.blur();
  scrollTo(0, 0);
  return { count: all.length, dates: document.querySelectorAll('input[type^=date], input[type=time]').length };
}
