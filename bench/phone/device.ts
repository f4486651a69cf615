import { type CDPSession, chromium, type Page } from '@playwright/test';
import { browser } from '../../scripts/chromium.mjs';
import { type Noted, watch } from './watch';

/** How much slower the page's thread is made, as a mid-range phone's. */
export const SLOWER = 4;
const WAIT_MS = 150_000;

/** A phone with a browser of its own, which comes to the app at `appPort` by way of `linePort`. */
export async function startPhone({ appPort, linePort, home }: { appPort: number; linePort: number; home: string }) {
  const context = await chromium.launchPersistentContext(home, {
    ...browser(),
    args: [
      `--host-resolver-rules=MAP localhost:${appPort} 127.0.0.1:${linePort}`,
      ...(process.getuid?.() === 0 ? ['--no-sandbox'] : []), // Chromium's sandbox does not start as root
    ],
    baseURL: `http://localhost:${appPort}`,
    viewport: { width: 360, height: 740 },
    ...{ deviceScaleFactor: 2, isMobile: true, hasTouch: true },
  });
  context.setDefaultTimeout(WAIT_MS);
  await context.addInitScript('globalThis.__name = (one) => one;'); // tsx names what it compiles
  await context.addInitScript(watch);
  return context;
}

/** The session that slows a page down; one that was ended would let it go fast again. */
const sessions = new WeakMap<Page, CDPSession>();

/** A page whose thread is slowed down; a worker's cannot be, which is told once. */
export async function slowPage(context: Awaited<ReturnType<typeof startPhone>>): Promise<Page> {
  const page = await context.newPage();
  const session = await context.newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWER });
  sessions.set(page, session);
  return page;
}

/** Waits until what `waitFor` named is painted; answers when, in page time. */
export async function painted(page: Page): Promise<number> {
  const handle = await page.waitForFunction(() => window.bench.painted, undefined, { timeout: WAIT_MS, polling: 50 });
  return (await handle.jsonValue()) as number;
}

/** A hand is no quicker than this from what it reads to what it touches, and stays on it so long. */
const [HAND_MS, DOWN_MS] = [500, 80];

/** Touches and answers how long from the lifted finger until the selector is painted, and how long the worker was at it. */
export async function touched(page: Page, target: string, selector: string, text = '') {
  await page.evaluate(
    ([one, words]) => {
      document.addEventListener('pointerdown', () => window.bench.waitFor(one as string, words as string), {
        once: true,
      });
      window.bench.asks = [];
    },
    [selector, text],
  );
  await press(page, target);
  const at = await painted(page);
  const { touched: from, asks } = await noted(page);
  const waited = asks.filter((ask) => ask.from >= from && ask.from + ask.ms <= at);
  return { ms: at - from, workerMs: waited.reduce((sum, ask) => sum + ask.workerMs, 0), asks: waited };
}

/** A finger comes down and is lifted: a tap of the driver's does both at once, which no hand can. */
async function press(page: Page, target: string) {
  await page.waitForTimeout(HAND_MS);
  const one = page.locator(target).first();
  await one.scrollIntoViewIfNeeded();
  const box = await one.boundingBox();
  if (box === null) throw new Error(`${target} is not seen`);
  const session = sessions.get(page);
  if (session === undefined) throw new Error('The page is not a slow one');
  const at = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  await session.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [at] });
  await page.waitForTimeout(DOWN_MS);
  await session.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
}

export const noted = (page: Page): Promise<Noted> =>
  page.evaluate(() => {
    const { shifts, asks, touched, painted } = window.bench;
    return { shifts, asks, touched, painted };
  });
