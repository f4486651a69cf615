// npm run bench:pack: what a phone is told of a plant of 5,000 sets and 8,000 motors, whole and after a change: bytes and
// time, on a database of its own.
import { gzipSync } from 'node:zlib';
import type { Pack } from '@/lib/offline/pack';
import { fillPlant } from './fill-plant';
import { onOwnDatabase } from './on-own-database';

const SIZE = { sets: 5_000, spares: 3_000 };
const SWAPS = 10_000;
const kb = (bytes: number) => (bytes / 1e3).toFixed(1).padStart(8);

await onOwnDatabase(bench);

async function bench(): Promise<void> {
  const { db } = await import('@/lib/db/client');
  const { changeThings } = await import('@/lib/register/commands/change-things');
  const { packSince } = await import('@/lib/register/queries/pack');
  const { actor, sets } = await fillPlant({ ...SIZE, swaps: SWAPS });
  const { siteId } = actor;

  const asked = async (what: string, since: string | null): Promise<string> => {
    const pages: { raw: number; packed: number; ms: number }[] = [];
    let [records, cursor] = [0, ''];
    for (let page: string | null = null; ; ) {
      const start = performance.now();
      const pack: Pack | null = await packSince(actor, { since, page });
      if (pack === null) throw new Error('no page');
      const text = Buffer.from(JSON.stringify(pack));
      const ms = performance.now() - start;
      pages.push({ raw: text.length, packed: gzipSync(text).length, ms });
      records += pack.sets.length + pack.motors.length;
      cursor = pack.cursor;
      if (pack.next === null) break;
      page = pack.next;
    }
    const sum = (key: 'raw' | 'packed' | 'ms') => pages.reduce((total, one) => total + one[key], 0);
    const most = Math.max(...pages.map(({ ms }) => ms));
    console.log(
      `${what.padEnd(34)} ${String(records).padStart(6)} records ${String(pages.length).padStart(3)} pages` +
        ` ${kb(sum('raw'))} kB, gzip ${kb(sum('packed'))} kB  ${sum('ms').toFixed(0).padStart(6)} ms, a page at most ${most.toFixed(0)} ms`,
    );
    return cursor;
  };
  const cursor = await asked('whole, the first time', null);
  await asked('whole, again', null);
  await asked('nothing has changed', cursor);
  const [one = ''] = sets.values();
  await changeThings(actor, [{ thing: 'set', id: one, version: null, edit: { service: 'Rinse' } }]);
  await asked('one set has changed', cursor);
  const area = await db.area.findFirstOrThrow({ where: { siteId } });
  await changeThings(actor, [{ thing: 'area', id: area.id, version: null, edit: { name: 'Hall of the bench' } }]);
  await asked('an area was renamed', cursor);
  await db.$disconnect();
}
