import { readdirSync, statSync } from 'node:fs';
import path from 'node:path';
import type { BrowserContext, Page } from '@playwright/test';
import { painted, SLOWER, slowPage } from './device';
import { DIRECT, type Line, type lineTo, SLOW_4G } from './line';
import { tellShifts } from './shifts';
import { tell } from './table';

type ShapedLine = Awaited<ReturnType<typeof lineTo>>;
const s = (ms: number) => ms / 1_000;

/** The phone opens /pump for the first time: nothing of it is there. */
export async function firstEver(phone: BrowserContext, line: ShapedLine, how: Line, tag: string) {
  line.be(how);
  const before = line.bytes.down;
  const page = await slowPage(phone);
  await page.addInitScript(() => window.bench.waitFor('main [role=status]', 'Bringing the site'));
  await page.goto('/pump', { waitUntil: 'commit' });
  const shell = await painted(page);
  const toShell = line.bytes.down - before;
  tell(`First open ever, ${how.name}: the page answers`, s(shell), 's', how === SLOW_4G ? 3 : null);
  await page.evaluate(() => window.bench.waitFor('p.label', 'lie on this phone'));
  const pack = await painted(page);
  tell(`  until the whole snapshot is there`, s(pack), 's', null, 'from the same touch');
  tell(`  snapshot alone`, s(pack - shell), 's', null);
  tell(`  over the line until then, app and snapshot`, (line.bytes.down - before) / 1e3, 'kB', null);
  tell(`  of it until the page answered`, toShell / 1e3, 'kB', null);
  await page.fill('#q', tag);
  await page.locator('.lines .line-name', { hasText: tag }).first().waitFor();
  await tellShifts(page, `  layout shift`);
  if (how === SLOW_4G) tellSizes();
  line.be(DIRECT);
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  await page.close();
}

/** The snapshot is on the phone, nothing of the app is: a cold first load until a typed tag is answered. */
export async function withoutTheApp(phone: BrowserContext, line: ShapedLine, tag: string) {
  const before = await slowPage(phone);
  await before.goto('/icon.svg');
  await before.evaluate(async () => {
    for (const one of await navigator.serviceWorker.getRegistrations()) await one.unregister();
    for (const name of await caches.keys()) await caches.delete(name);
  });
  const session = await phone.newCDPSession(before);
  await session.send('Network.clearBrowserCache');
  line.be(SLOW_4G);
  const page = await slowPage(phone);
  await before.close();
  await typed(page, tag);
  await tellTyped(page, 'Cold first load, slow 4G, snapshot there: a tag is answered', 3);
  await tellShifts(page, '  layout shift');
  line.be(DIRECT);
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  await page.close();
}

/** App and snapshot are on the phone: taken out of the pocket. */
export async function opened(phone: BrowserContext, line: ShapedLine, tag: string) {
  line.be(SLOW_4G);
  const page = await slowPage(phone);
  await typed(page, tag);
  await tellTyped(page, 'Opened again, slow 4G: a tag is answered', 3);
  await tellShifts(page, '  layout shift');
  await page.close();
}

async function typed(page: Page, tag: string) {
  await page.addInitScript((one) => window.bench.typeAtOnce(one), tag);
  await page.goto('/pump', { waitUntil: 'commit' });
}

async function tellTyped(page: Page, what: string, most: number) {
  const at = await painted(page);
  const asks = await page.evaluate(() => window.bench.asks);
  // The page asks for both at once: the later one waited for the earlier.
  const load = Math.max(
    ...['status', 'find'].map((one) => asks.find(({ name }) => name === one)?.workerMs ?? Number.NaN),
  );
  tell(what, s(at + (SLOWER - 1) * load), 's', most, `as measured ${s(at).toFixed(2)} s`);
  tell(
    '  of it the snapshot in brief out of the phone’s database, and the search',
    (SLOWER * load) / 1e3,
    's',
    null,
    `as measured ${load.toFixed(0)} ms`,
  );
}

/** What the app weighs, packed: all of its script, wherever it runs and whenever it is fetched. */
function tellSizes() {
  const names = readdirSync('.phone').filter((name) => name.endsWith('.br') || name.endsWith('.woff2'));
  for (const [kind, most] of [
    ['js', 170],
    ['css', null],
    ['woff2', null],
    ['wasm', null],
  ] as const) {
    const of = names.filter((name) => name.replace(/\.br$/, '').endsWith(`.${kind}`));
    const bytes = of.reduce((sum, name) => sum + statSync(path.join('.phone', name)).size, 0);
    tell(`  ${kind}, all of it, packed`, bytes / 1e3, 'kB', most, `${of.length} files`);
  }
}
