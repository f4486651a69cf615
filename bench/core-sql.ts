import pg from 'pg';
import type { MotorRow, SetRow } from './core-columns';

const TABLES = `
  CREATE TABLE core_set (phases int4, volts float8, hertz int4, poles int4, kw float8, feet int4, face int4);
  CREATE TABLE core_motor (phases int4, hertz int4, poles int4, kw float8, low_volts float8, high_volts float8, feet int4, face int4)`;

const PREDICATE = `
  SELECT count(*)::int AS passed FROM core_set s JOIN core_motor m
    ON m.phases = s.phases AND m.hertz = s.hertz AND m.poles = s.poles AND m.kw >= s.kw
    AND s.volts BETWEEN m.low_volts AND m.high_volts
    AND ((s.feet <> 0 AND m.feet = s.feet) OR (s.face <> 0 AND m.face = s.face))`;

/** The same predicate as SQL, indexed and analysed, on one worker as the loop is. */
export async function coreSql(url: string, sets: readonly SetRow[], motors: readonly MotorRow[]) {
  const client = new pg.Client(url);
  await client.connect();
  await client.query(TABLES);
  await load(
    client,
    'core_set',
    ['phases', 'volts', 'hertz', 'poles', 'kw', 'feet', 'face'],
    sets.map((s) => [s.phases, s.volts, s.hertz, s.poles, s.kw, s.feet, s.face]),
  );
  await load(
    client,
    'core_motor',
    ['phases', 'hertz', 'poles', 'kw', 'low_volts', 'high_volts', 'feet', 'face'],
    motors.map((m) => [m.phases, m.hertz, m.poles, m.kw, m.lowVolts, m.highVolts, m.feet, m.face]),
  );
  await client.query(
    'CREATE INDEX ON core_motor (phases, hertz, poles, feet, kw); CREATE INDEX ON core_motor (phases, hertz, poles, face, kw)',
  );
  await client.query('ANALYZE core_set; ANALYZE core_motor; SET max_parallel_workers_per_gather = 0; SET jit = off');
  return {
    run: async (): Promise<number> => (await client.query(PREDICATE)).rows[0].passed,
    end: () => client.end(),
  };
}

async function load(client: pg.Client, table: string, columns: string[], rows: number[][]) {
  const lists = columns.map((_, c) => rows.map((row) => row[c]));
  const slots = columns.map((_, c) => `$${c + 1}::float8[]`).join(', ');
  await client.query(`INSERT INTO ${table} (${columns.join(', ')}) SELECT * FROM unnest(${slots})`, lists);
}
