import type { BrowserContext } from '@playwright/test';
import type { Actor } from '@/lib/auth/may';
import { slowPage } from './device';
import { type lineTo, SLOW_4G } from './line';
import { tell } from './table';

/** One plate changes in the register; the phone fetches what changed. */
export async function renewed(
  phone: BrowserContext,
  line: Awaited<ReturnType<typeof lineTo>>,
  actor: Actor,
  motorId: string,
) {
  const { changeThings } = await import('@/lib/register/commands/change-things');
  const page = await slowPage(phone);
  await page.goto('/pump');
  await page.locator('.offline button', { hasText: 'Renew' }).waitFor();
  await page.waitForTimeout(3_000); // what the start asks for is over
  const done = await changeThings(actor, [{ thing: 'motor', id: motorId, version: null, edit: { massKg: 77 } }]);
  if (done.outcome !== 'saved') throw new Error(JSON.stringify(done));
  line.be(SLOW_4G);
  const before = line.bytes.down;
  await page.evaluate(() => {
    window.bench.asks = [];
  });
  await page.locator('.offline button', { hasText: 'Renew' }).tap();
  const handle = await page.waitForFunction(
    () => window.bench.asks.find(({ name }) => name === 'bringUp')?.ms ?? null,
    undefined,
    { timeout: 60_000 },
  );
  const ms = (await handle.jsonValue()) as number;
  tell('One plate has changed, slow 4G: fetched and kept', ms / 1e3, 's', null);
  tell('  over the line', (line.bytes.down - before) / 1e3, 'kB', null);
  await page.close();
}
