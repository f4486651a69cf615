import fs from 'node:fs';
import path from 'node:path';
import zlib from 'node:zlib';
import pg from 'pg';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { keepPicture } from '@/lib/register/commands/keep-picture';
import { recordSwap } from '@/lib/register/commands/record-swap';
import { backup, restore } from '../../scripts/backup.mjs';
import { jpeg } from '../picture/made';
import { got, smallPlant } from '../register/plant';
import { asOwner, besideIt } from './as-owner';

const url = String(process.env.DATABASE_URL);
const folder = path.resolve(`.data/backup-${process.pid}`);
const file = path.join(folder, 'plant.backup');
const made: string[] = [];

beforeAll(async () => {
  fs.mkdirSync(folder, { recursive: true });
  const { actor, motors, swap } = await smallPlant();
  await recordSwap(actor, swap('P-101', 'M-1', 'M-7'), null);
  const of = { thing: 'motor', id: got(motors, 'M-2') } as const;
  await keepPicture(actor, { of, caption: 'ø 28 – “plate”', bytes: await jpeg() });
});
afterAll(async () => {
  fs.rmSync(folder, { recursive: true, force: true });
  for (const name of made) await besideIt(() => `DROP DATABASE IF EXISTS "${name}" WITH (FORCE)`);
});

/** An empty database beside this test's own. */
async function emptyOne(): Promise<string> {
  const name = `restored_${made.length}_${process.pid}`;
  made.push(name);
  await besideIt(() => `CREATE DATABASE "${name}"`);
  const other = new URL(url);
  other.pathname = `/${name}`;
  return other.href;
}

async function on(at: string, sql: string) {
  const client = new pg.Client(at);
  await client.connect();
  return (await client.query(sql).finally(() => client.end())).rows;
}
const PLANT = `SELECT s.tag, s.version, s.norm, m.plant_number, m.version AS of_motor FROM pump_set AS s
  LEFT JOIN motor AS m ON m.set_id = s.id ORDER BY s.tag`;

test('R11 what is kept comes back row by row: the same counts, the same sums, and the register works', async () => {
  const kept = await backup(url, file);
  expect(kept.pump_set?.[0]).toBe(2);
  expect(kept.attachment?.[0]).toBe(1);
  const other = await emptyOne();
  expect(await restore(other, file)).toEqual(kept);
  expect(await on(other, PLANT)).toEqual(await on(url, PLANT));
  expect(await on(other, 'SELECT encode(content, $$hex$$) AS c FROM attachment')).toEqual(
    await on(url, 'SELECT encode(content, $$hex$$) AS c FROM attachment'),
  );
  // The triggers stand again: a change counts, and the audit stays as it is.
  await on(other, `UPDATE pump_set SET service = 'Oil' WHERE tag = 'P-102'`);
  const [before] = await on(url, `SELECT version FROM pump_set WHERE tag = 'P-102'`);
  expect(await on(other, `SELECT version FROM pump_set WHERE tag = 'P-102'`)).toEqual([
    { version: before.version + 1 },
  ]);
  await expect(on(other, 'DELETE FROM audit_entry')).rejects.toThrow();
});

test('R11 it is one moment, for its owner’s eyes, and never written over another file', async () => {
  const once = path.join(folder, 'once.backup');
  await backup(url, once);
  expect(fs.statSync(once).mode & 0o077).toBe(0);
  const bytes = fs.readFileSync(once);
  await expect(backup(url, once)).rejects.toMatchObject({ code: 'EEXIST' });
  expect(fs.readFileSync(once)).toEqual(bytes);
  expect(fs.readdirSync(folder).filter((name) => name.endsWith('.part'))).toEqual([]);
  const text = zlib.gunzipSync(bytes).toString('utf8');
  expect(text).not.toMatch(/^\["session"/m);
});

test('R11 what is damaged, cut short, of another version or no backup at all restores nothing', async () => {
  const whole = zlib.gunzipSync(fs.readFileSync(file)).toString('utf8').trimEnd().split('\n');
  const write = (name: string, lines: string[]) => {
    const at = path.join(folder, name);
    fs.writeFileSync(at, zlib.gzipSync(`${lines.join('\n')}\n`));
    return at;
  };
  const head = JSON.parse(String(whole[0]));
  const other = await emptyOne();
  for (const [bad, why] of [
    [write('short', whole.slice(0, -1)), /not whole|otherwise than it says/],
    [
      write(
        'changed',
        whole.map((line) => line.replace('"P-101"', '"P-999"')),
      ),
      /otherwise than it says/,
    ],
    [
      write('older', [JSON.stringify({ ...head, migrations: head.migrations.slice(0, -1) }), ...whole.slice(1)]),
      /another version/,
    ],
    [write('none', ['{"kind":"else"}']), /no backup/],
    [write('stray', [...whole, '["pg_authid",{}]']), /not a table here/],
  ] as const) {
    await expect(restore(other, bad)).rejects.toThrow(why);
    expect(await on(other, 'SELECT count(*)::int AS sets FROM pump_set')).toEqual([{ sets: 0 }]);
  }
  const cut = path.join(folder, 'cut');
  fs.writeFileSync(cut, fs.readFileSync(file).subarray(0, 2_000));
  await expect(restore(other, cut)).rejects.toMatchObject({ code: 'Z_BUF_ERROR' });
  await expect(restore(other, path.join(folder, 'nowhere'))).rejects.toMatchObject({ code: 'ENOENT' });
  await expect(restore(url, file)).rejects.toThrow(/not empty/);
  expect((await asOwner('SELECT count(*)::int AS sets FROM pump_set')).rows).toEqual([{ sets: 2 }]);
});
