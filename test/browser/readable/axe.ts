import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';

const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/**
 * What axe finds by WCAG 2.2 A and AA, by good practice, and by the contrast of AAA (1.4.6, 7:1); a line each. Where it cannot
 * tell what a text stands on, the text must be 7:1 on each ground that a sheet has.
 */
export async function axeFinds(page: Page): Promise<string[]> {
  // The bar at the foot lies over what is scrolled under it: axe is shown the page without that.
  await stick(page, false);
  const { violations, incomplete } = await new AxeBuilder({ page })
    .options({
      runOnly: { type: 'tag', values: TAGS },
      rules: { 'color-contrast-enhanced': { enabled: true }, 'target-size': { enabled: true } },
      resultTypes: ['violations', 'incomplete'],
    })
    .setLegacyMode() // no page has frames, for whose sake it would open a page of its own each time
    .analyze();
  await stick(page, true);
  const untold = incomplete.filter(({ id }) => id.startsWith('color-contrast')).flatMap(({ nodes }) => nodes);
  const faint = await faintOnAnyGround(
    page,
    untold.map(({ target }) => String(target[0])),
  );
  return [...violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html.slice(0, 160)}`)), ...faint];
}

const stick = (page: Page, isStuck: boolean) =>
  page.evaluate(
    (position) => {
      for (const one of document.querySelectorAll<HTMLElement>('.actions')) one.style.position = position;
    },
    isStuck ? '' : 'static',
  );

/** Of these texts, those under 7:1 on the sheet, on the board, or on the wash of a row to act on. */
const faintOnAnyGround = (page: Page, targets: string[]): Promise<string[]> =>
  page.evaluate((selectors) => {
    const root = getComputedStyle(document.documentElement);
    const channels = (colour: string): number[] =>
      colour.startsWith('#')
        ? [1, 3, 5].map((at) => Number.parseInt(colour.slice(at, at + 2), 16))
        : (colour.match(/[\d.]+/g) ?? []).map(Number);
    // Relative luminance and contrast as WCAG 2.2 defines them.
    const luminance = (colour: string) =>
      channels(colour)
        .slice(0, 3)
        .map((part) => part / 255)
        .map((part) => (part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4))
        .reduce((sum, part, i) => sum + part * ([0.2126, 0.7152, 0.0722][i] as number), 0);
    const contrast = (one: string, other: string) => {
      const [dark, light] = [luminance(one), luminance(other)].sort((a, b) => a - b) as [number, number];
      return (light + 0.05) / (dark + 0.05);
    };
    const grounds = ['paper', 'board', 'accent-wash'].map((name) => root.getPropertyValue(`--color-${name}`).trim());
    return selectors.flatMap((selector) => {
      const one = document.querySelector(selector);
      if (one === null) return [`not found again: ${selector}`];
      const { color, fill } = getComputedStyle(one);
      const ink = one instanceof SVGElement ? fill : color;
      const least = Math.min(...grounds.map((ground) => contrast(ink, ground)));
      return least >= 7 ? [] : [`contrast ${least.toFixed(1)}: ${one.outerHTML.slice(0, 120)}`];
    });
  }, targets);
