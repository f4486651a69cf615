// npm run bench:phone: the app at the pump on a phone in a real browser, with a plant of 5 000 sets and 3 000 motors on
// shelves (8 000 in all): first load, list, layout, snapshot. Ends with 1 when a target is missed. Build first.
import { mkdtempSync, rmSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { fillPlant } from './fill-plant';
import { startApp } from './phone/app';
import { SLOWER, startPhone } from './phone/device';
import { DIRECT, GOOD, lineTo, SLOW_4G } from './phone/line';
import { lists } from './phone/lists';
import { firstEver, opened, withoutTheApp } from './phone/loads';
import { renewed } from './phone/renewed';
import { missedTargets } from './phone/table';

const SIZE = { sets: 5_000, spares: 3_000, swaps: 10_000 };
const LISTS = 20;
const person = { name: 'Tam Oakes', email: 'tam@example.com', password: 'a bench for phones 7' };

const folder = mkdtempSync(path.join(os.tmpdir(), 'bedplate-bench-'));
const app = await startApp(path.join(folder, 'data'));
const line = await lineTo(app.port);
try {
  process.env.DATABASE_URL = app.databaseUrl; // read when the client is first imported
  await bench();
} finally {
  await line.stop();
  await app.stop();
  rmSync(folder, { recursive: true, force: true });
}
for (const what of missedTargets()) console.log(`Missed: ${what}`);
process.exit(missedTargets().length === 0 ? 0 : 1);

async function bench(): Promise<void> {
  const { db } = await import('@/lib/db/client');
  const { registerPerson } = await import('@/lib/register/commands/register-person');
  const { actor, sets, motors } = await fillPlant(SIZE);
  await registerPerson(null, { siteId: actor.siteId, role: 'technician', ...person });
  await db.$executeRaw`ANALYZE`; // as the database does by itself a minute later
  const every = Math.floor(sets.size / LISTS);
  const tags = [...sets.keys()].filter((_, i) => i % every === 7).slice(0, LISTS);
  console.log(
    `${os.cpus()[0]?.model}, ${os.cpus().length} cores, Node ${process.version}. The page's thread is ${SLOWER} times slower; a ` +
      `worker's cannot be slowed down, so its work is counted ${SLOWER} times.\n` +
      `Slow 4G: ${SLOW_4G.down / 1e6} Mbit/s down, ${SLOW_4G.up / 1e6} up, ${SLOW_4G.roundTripMs} ms; ` +
      `good line: ${GOOD.down / 1e6} Mbit/s down, ${GOOD.up / 1e6} up, ${GOOD.roundTripMs} ms.\n`,
  );
  const signedIn = async (name: string) => {
    line.be(DIRECT);
    const phone = await startPhone({ appPort: app.port, linePort: line.port, home: path.join(folder, name) });
    const page = await phone.newPage();
    await page.goto('/sign-in?to=/icon.svg');
    await page.getByLabel('E-mail').fill(person.email);
    await page.getByLabel('Password').fill(person.password);
    await page.getByRole('button', { name: 'Sign in' }).tap();
    await page.waitForURL(({ pathname }) => pathname === '/icon.svg');
    await page.close();
    return phone;
  };

  const other = await signedIn('other');
  try {
    await firstEver(other, line, GOOD, tags[0] ?? '');
  } finally {
    await other.close();
  }
  const phone = await signedIn('phone');
  try {
    await firstEver(phone, line, SLOW_4G, tags[0] ?? '');
    await withoutTheApp(phone, line, tags[1] ?? '');
    await opened(phone, line, tags[2] ?? '');
    line.be(DIRECT);
    await lists(phone, tags);
    const [motorId = ''] = motors.values();
    await renewed(phone, line, actor, motorId);
  } finally {
    await phone.close();
    await db.$disconnect();
  }
}
