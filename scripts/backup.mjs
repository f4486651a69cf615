// The whole register in one file, and back. Lines of JSON, packed: a head with counts and sums, then a row a line.
//
//   backup FILE     as it stands at one moment, while people work
//   restore FILE    into an empty register, all of it or nothing
import fs from 'node:fs';
import path from 'node:path';
import { pipeline } from 'node:stream/promises';
import { fileURLToPath } from 'node:url';
import zlib from 'node:zlib';
import pg from 'pg';
import { deploy, withDatabase } from './migrate.mjs';

const KIND = 'bedplate-backup-1';
/** Who is signed in, and who tried: everybody signs in anew. Which register it is: what comes back is another. */
const LEFT_OUT = ['_prisma_migrations', 'register_identity', 'session', 'verification', 'rateLimit', 'sign_in_limit'];
const STEP = 500;
const name = (table) => pg.escapeIdentifier(table);

/** Writes the register into a file that is not there yet. Resolves to its counts by table. */
export async function backup(url, file) {
  const part = `${file}.part`;
  return onClient(url, async (client) => {
    await client.query('BEGIN ISOLATION LEVEL REPEATABLE READ READ ONLY');
    const tables = await tablesOf(client);
    const head = {
      kind: KIND,
      at: new Date().toISOString(),
      migrations: await migrationsOf(client),
      tables: await sumsOf(client, tables),
    };
    async function* lines() {
      yield `${JSON.stringify(head)}\n`;
      for (const table of tables) {
        await client.query(`DECLARE rows NO SCROLL CURSOR FOR SELECT to_jsonb(t) AS row FROM ${name(table)} AS t`);
        for (;;) {
          const { rows } = await client.query(`FETCH ${STEP} FROM rows`);
          if (rows.length === 0) break;
          yield rows.map(({ row }) => `${JSON.stringify([table, row])}\n`).join('');
        }
        await client.query('CLOSE rows');
      }
    }
    try {
      // Passwords are in it, hashed: it is for its owner's eyes only.
      await pipeline(lines(), zlib.createGzip(), fs.createWriteStream(part, { flags: 'wx', mode: 0o600 }));
      fs.linkSync(part, file); // fails when it is there
    } finally {
      fs.rmSync(part, { force: true });
    }
    await client.query('COMMIT');
    return head.tables;
  });
}

/** Reads a file into an empty register, and holds what is there then against what the file says. */
export async function restore(url, file) {
  await deploy(url);
  return onClient(url, async (client) => {
    let head = null;
    let batch = { table: null, rows: [] };
    const tables = await tablesOf(client);
    const columns = await columnsOf(client);
    const write = async () => {
      if (batch.rows.length === 0) return;
      const list = columns.get(batch.table).map(name).join(', ');
      await client.query(
        `INSERT INTO ${name(batch.table)} (${list}) SELECT ${list} FROM jsonb_populate_recordset(NULL::${name(batch.table)}, $1)`,
        [JSON.stringify(batch.rows)],
      );
    };
    await client.query('BEGIN');
    try {
      for (const table of tables) {
        const { rows } = await client.query(`SELECT EXISTS (SELECT FROM ${name(table)}) AS filled`);
        if (rows[0].filled)
          throw new Error(`The register is not empty: “${table}” has rows. Restore into an empty one.`);
        // What triggers keep is in the file; fired, they would count every row as a change.
        await client.query(`ALTER TABLE ${name(table)} DISABLE TRIGGER USER`);
      }
      for await (const line of linesOf(file)) {
        if (head === null) {
          head = headOf(line);
          const there = (await migrationsOf(client)).join();
          if (head.migrations.join() !== there)
            throw new Error(`The file is of another version: its last migration is ${head.migrations.at(-1)}.`);
          continue;
        }
        const [table, row] = JSON.parse(line);
        if (!columns.has(table)) throw new Error(`The file has rows of “${table}”, which is not a table here.`);
        if (table !== batch.table || batch.rows.length === STEP) {
          await write();
          batch = { table, rows: [] };
        }
        batch.rows.push(row);
      }
      await write();
      if (head === null) throw new Error('The file is empty.');
      for (const table of tables) await client.query(`ALTER TABLE ${name(table)} ENABLE TRIGGER USER`);
      const sums = await sumsOf(client, tables);
      const wrong = tables.filter((table) => JSON.stringify(sums[table]) !== JSON.stringify(head.tables[table]));
      if (wrong.length > 0)
        throw new Error(`The file is not whole: ${wrong.join(', ')} came out otherwise than it says.`);
      await client.query('COMMIT');
      return sums;
    } catch (error) {
      await client.query('ROLLBACK');
      throw error;
    }
  });
}

async function* linesOf(file) {
  const unpacked = zlib.createGunzip();
  // What goes wrong on the way comes out where it is read.
  pipeline(fs.createReadStream(file), unpacked).catch(() => {});
  let rest = '';
  for await (const part of unpacked.setEncoding('utf8')) {
    const lines = (rest + part).split('\n');
    rest = lines.pop();
    yield* lines;
  }
  if (rest !== '') throw new Error('The file is not whole: its last line is cut.');
}

function headOf(line) {
  try {
    const head = JSON.parse(line);
    if (head.kind === KIND) return head;
  } catch {
    // told below
  }
  throw new Error('The file is no backup of Bedplate.');
}

/** The tables of the register, each behind those it points to. */
async function tablesOf(client) {
  const { rows } = await client.query(
    `SELECT c.relname AS name, coalesce(array_agg(r.relname::text) FILTER (WHERE r.relname <> c.relname), '{}') AS after
     FROM pg_class AS c
     LEFT JOIN pg_constraint AS k ON k.conrelid = c.oid AND k.contype = 'f' LEFT JOIN pg_class AS r ON r.oid = k.confrelid
     WHERE c.relkind = 'r' AND c.relnamespace = 'public'::regnamespace GROUP BY c.relname ORDER BY c.relname`,
  );
  const left = new Map(rows.filter((row) => !LEFT_OUT.includes(row.name)).map((row) => [row.name, row.after]));
  const order = [];
  while (left.size > 0) {
    const next = [...left].filter(([, after]) => after.every((one) => !left.has(one))).map(([table]) => table);
    if (next.length === 0) throw new Error(`tables that point at each other: ${[...left.keys()].join(', ')}`);
    for (const table of next) left.delete(table);
    order.push(...next);
  }
  return order;
}

async function columnsOf(client) {
  const { rows } = await client.query(
    `SELECT c.relname AS table, array_agg(a.attname::text ORDER BY a.attnum) AS columns FROM pg_attribute AS a
     JOIN pg_class AS c ON c.oid = a.attrelid AND c.relkind = 'r' AND c.relnamespace = 'public'::regnamespace
     WHERE a.attnum > 0 AND NOT a.attisdropped AND a.attgenerated = '' GROUP BY c.relname`,
  );
  return new Map(rows.map((row) => [row.table, row.columns]));
}

const migrationsOf = async (client) =>
  (
    await client.query('SELECT migration_name AS name FROM _prisma_migrations WHERE rolled_back_at IS NULL ORDER BY 1')
  ).rows.map((row) => row.name);

/** By table: how many rows, and a sum that changes with any of them. */
async function sumsOf(client, tables) {
  const sums = {};
  for (const table of tables) {
    const { rows } = await client.query(
      `SELECT count(*)::int AS rows, coalesce(sum(hashtextextended(to_jsonb(t)::text, 0)::numeric), 0)::text AS sum FROM ${name(table)} AS t`,
    );
    sums[table] = [rows[0].rows, rows[0].sum];
  }
  return sums;
}

async function onClient(url, work) {
  const client = new pg.Client({ connectionString: url, options: '-c timezone=UTC -c extra_float_digits=3' });
  await client.connect();
  try {
    return await work(client);
  } finally {
    await client.end();
  }
}

const REASONS = {
  EEXIST: (file) => `${file} is there already: name another file.`,
  ENOENT: (file) => `${file} is not there, or its folder is not.`,
  ENOSPC: (file) => `There is no room for ${file}: nothing was kept.`,
  EACCES: (file) => `${file} may not be read or written.`,
  Z_DATA_ERROR: (file) => `${file} is no backup of Bedplate, or is damaged.`,
  Z_BUF_ERROR: (file) => `${file} is not whole.`,
};

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const [command, file, ...more] = process.argv.slice(2);
  const work = { backup, restore }[command];
  if (work === undefined || file === undefined || more.length > 0) {
    console.error('usage: backup FILE | restore FILE');
    process.exit(2);
  }
  try {
    const tables = await withDatabase((url) => work(url, path.resolve(file)));
    const rows = Object.values(tables).reduce((sum, [count]) => sum + count, 0);
    console.log(`${command === 'backup' ? 'kept' : 'restored'} ${rows} rows of ${Object.keys(tables).length} tables`);
  } catch (error) {
    console.error(REASONS[error.code]?.(file) ?? error.message);
    process.exitCode = 1;
  }
}
