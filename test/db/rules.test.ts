import { beforeAll, describe, expect, test } from 'vitest';
import { db } from '@/lib/db/client';
import { labelText, readLabelCode } from '@/lib/plant/label-code';
import { got, smallPlant } from '../register/plant';
import { asOwner } from './as-owner';

/** What the database itself refuses, whoever asks: each row a change to a plant in order, and the rule it breaks. */
let plant: Awaited<ReturnType<typeof smallPlant>>;
beforeAll(async () => {
  plant = await smallPlant();
});

const motor = (set: string, where = "plant_number = 'M-7'") => `UPDATE motor SET ${set} WHERE ${where}`;
const rating = (set: string) => `UPDATE rating SET ${set} WHERE line = 1`;
const plate = (set: string) => `UPDATE nameplate SET ${set}`;
const pumpSet = (set: string) => `UPDATE pump_set SET ${set} WHERE tag = 'P-101'`;

describe('a motor is in one place', () => {
  test.each([
    ['in a set and on a shelf', motor(`set_id = (SELECT id FROM pump_set LIMIT 1)`), 'motor_one_place'],
    ['in a set that is not named', motor(`place = 'in-set', shelf_id = NULL`), 'motor_one_place'],
    ['at repair and still on its shelf', motor(`place = 'at-repair'`), 'motor_one_place'],
    ['nowhere known', motor(`place = 'lent', shelf_id = NULL`), 'motor_place_known'],
    [
      'a second one in a set',
      motor(`place = 'in-set', shelf_id = NULL, set_id = (SELECT set_id FROM motor WHERE plant_number = 'M-1')`),
      'motor_site_id_set_id_key',
    ],
    ['a plant number that is there', motor(`plant_number = 'M-8'`), 'motor_site_id_plant_number_key'],
    [
      'a set that is not there',
      motor(`place = 'in-set', shelf_id = NULL, set_id = gen_random_uuid()`),
      'motor_site_id_set_id_fkey',
    ],
    ['retired while on a shelf', motor(`retired_at = now()`), 'motor_retired_nowhere'],
  ])('%s is refused', refuses);
});

describe('figures keep to their range', () => {
  test.each([
    ['no volts', rating('volts = 0'), 'rating_ranges'],
    ['volts that are no number', rating(`volts = 'NaN'`), 'rating_ranges'],
    ['endless volts', rating(`volts = 'Infinity'`), 'rating_ranges'],
    ['hp and kW', rating('kw = 3.7'), 'rating_one_power'],
    ['a range upside down', rating('volts_min = 480, volts_max = 440, volts = NULL'), 'rating_volts_order'],
    ['volts outside the printed range', rating('volts_min = 380, volts_max = 420'), 'rating_volts_order'],
    ['a power factor above one', rating('pf = 1.1'), 'rating_ranges'],
    ['an unknown connection', rating(`connection = 'zigzag'`), 'rating_connection'],
    ['three poles', plate('poles = 3'), 'nameplate_ranges'],
    ['two phases', plate('phases = 2'), 'nameplate_ranges'],
    ['a service factor under one', plate('service_factor = 0.9'), 'nameplate_ranges'],
    ['an unknown kind', plate(`kind = 'steam'`), 'nameplate_words'],
    ['an IP code of one digit', plate(`ip = 'IP5'`), 'nameplate_words'],
    ['a negative number of rewinds', motor('rewinds = -1'), 'motor_ranges'],
    ['negative insulation', motor('insulation_mohm = -1'), 'motor_ranges'],
    ['a blank tag', pumpSet(`tag = ' - '`), 'pump_set_tag_written'],
    ['a tag over two lines', pumpSet(`tag = E'P-101\\nP-102'`), 'pump_set_tag_written'],
    ['a tag that is there', pumpSet(`tag = 'P-102'`), 'pump_set_site_id_tag_key'],
    ['a criticality of five', pumpSet('criticality = 5'), 'pump_set_criticality'],
    ['an unknown need', pumpSet(`needs = ARRAY['wings']`), 'pump_set_needs_known'],
    ['a seat that is a list', pumpSet(`seat = '[]'`), 'pump_set_parts_object'],
    ['an unknown start', `UPDATE supply SET start = 'kick'`, 'supply_ranges'],
    ['an unknown role', `UPDATE "user" SET role = 'king'`, 'user_role_known'],
  ])('%s is refused', refuses);
});

async function refuses(_name: string, sql: string, rule: string) {
  await expect(db.$executeRawUnsafe(sql)).rejects.toThrow(rule);
}

describe('a label code', () => {
  const codes = async () => {
    const where = { siteId: plant.actor.siteId };
    const [sets, motors] = await Promise.all([db.pumpSet.findMany({ where }), db.motor.findMany({ where })]);
    return { sets: sets.map(({ code }) => String(code)), motors: motors.map(({ code }) => String(code)) };
  };
  const motorWith = (code: string, number: string) =>
    `INSERT INTO motor (site_id, plant_number, place, code)
     SELECT site_id, '${number}', 'at-repair', ${code} FROM pump_set WHERE tag = 'P-101'`;

  test('is given to every set and motor, no two alike, and is what a person’s typing is checked by', async () => {
    const { sets, motors } = await codes();
    expect(new Set([...sets, ...motors]).size).toBe(6);
    for (const code of [...sets, ...motors])
      expect(readLabelCode(labelText(code).toLowerCase())).toMatchObject({ ok: true, value: code });
  });

  test('stays, though the tag is changed', async () => {
    const before = (await codes()).sets.sort();
    await db.$executeRawUnsafe(pumpSet(`tag = 'P-109'`));
    await db.$executeRawUnsafe(`UPDATE pump_set SET tag = 'P-101' WHERE tag = 'P-109'`);
    expect((await codes()).sets.sort()).toEqual(before);
  });

  test.each([
    ['another code for a set', pumpSet(`code = '1023456J'`), 'a label code stays'],
    ['another code for a motor', motor(`code = '1023456J'`), 'a label code stays'],
    ['none for a motor', motor('code = NULL'), 'a label code stays'],
    ['a check sign that is not its own', motorWith(`'1023456K'`, 'M-90'), 'motor_label_sign'],
    ['a sign that no code has', motorWith(`'1023U56J'`, 'M-91'), 'motor_label_code'],
    ['the code of a set', motorWith('code', 'M-92'), 'label code .* is that of another record'],
    [
      'the code of another motor',
      motorWith(`(SELECT code FROM motor WHERE plant_number = 'M-7')`, 'M-93'),
      'motor_site_id_code_key',
    ],
    [
      'the code of a motor for a set',
      `INSERT INTO pump_set (site_id, tag, mounting, code)
       SELECT site_id, 'P-190', 'foot', code FROM motor WHERE plant_number = 'M-7'`,
      'label code .* is that of another record',
    ],
  ])('%s is refused', async (_name, sql, rule) => {
    await expect(db.$executeRawUnsafe(sql)).rejects.toThrow(new RegExp(rule));
  });

  test('that comes with a motor is kept, as a backup brings it back', async () => {
    await db.$executeRawUnsafe(motorWith(`'1023456J'`, 'M-94'));
    const kept = await db.motor.findFirstOrThrow({ where: { siteId: plant.actor.siteId, plantNumber: 'M-94' } });
    expect(kept.code).toBe('1023456J');
  });
});

test('a swap of a motor with itself is refused', async () => {
  const id = got(plant.motors, 'M-1');
  const swap = { siteId: plant.actor.siteId, setId: got(plant.sets, 'P-101'), byId: plant.actor.userId, why: 'Worn' };
  const rest = { key: crypto.randomUUID(), bodySha256: '0'.repeat(64), outTo: 'scrapped' };
  await expect(db.swap.create({ data: { ...swap, ...rest, motorInId: id, motorOutId: id } })).rejects.toThrow(
    'swap_two_motors',
  );
});

test('R3 a change of set, motor, plate or rating raises the version; a change of the words searched does not', async () => {
  const version = async () => {
    const where = { siteId: plant.actor.siteId };
    const m = await db.motor.findFirstOrThrow({ where: { ...where, plantNumber: 'M-7' } });
    const s = await db.pumpSet.findFirstOrThrow({ where: { ...where, tag: 'P-101' } });
    return [m.version, s.version] as const;
  };
  const [m, s] = await version();
  await db.$executeRawUnsafe(motor(`note = 'seen'`));
  expect(await version()).toEqual([m + 1, s]);
  const own = `motor_id = (SELECT id FROM motor WHERE plant_number = 'M-7')`;
  await db.$executeRawUnsafe(`UPDATE nameplate SET frame = '184TC' WHERE ${own}`);
  await db.$executeRawUnsafe(`UPDATE rating SET amps = 6.7 WHERE line = 1 AND ${own}`);
  expect(await version()).toEqual([m + 3, s]);
  await db.$executeRawUnsafe(pumpSet(`words = 'other'`));
  expect(await version()).toEqual([m + 3, s]);
  await db.$executeRawUnsafe(pumpSet(`service = 'Whey return'`));
  expect(await version()).toEqual([m + 3, s + 1]);
});

test('S29 the program’s role can neither alter the schema nor read the server’s own files', async () => {
  for (const sql of [
    'ALTER TABLE motor ADD COLUMN spy text',
    'CREATE TABLE spy (id int)',
    'DROP TABLE motor',
    'ALTER TABLE audit_entry DISABLE TRIGGER ALL',
    `SELECT pg_read_file('postmaster.pid')`,
  ])
    await expect(db.$executeRawUnsafe(sql), sql).rejects.toThrow(/must be owner|permission denied/);
});

test('nothing of the register can be deleted by the program', async () => {
  for (const table of [
    'site',
    'area',
    'store',
    'shelf',
    'pump',
    'supply',
    'pump_set',
    'motor',
    'nameplate',
    'swap',
    'fault',
  ])
    await expect(db.$executeRawUnsafe(`DELETE FROM ${table}`), table).rejects.toThrow(/permission denied/);
});

test('every table of a site has the site first in its key and in every index', async () => {
  const rows = await db.$queryRaw<{ index: string }[]>`
    SELECT i.indexrelid::regclass::text AS index
    FROM pg_index AS i JOIN pg_attribute AS a ON a.attrelid = i.indrelid AND a.attname = 'site_id'
    WHERE i.indrelid::regclass::text NOT IN ('"user"') AND i.indkey[0] <> a.attnum`;
  // A token or a link is looked up before anybody knows whose site it is for.
  expect(rows).toEqual([{ index: 'api_token_sha256_key' }, { index: 'person_link_sha256_key' }]);
});

test('a moment is stored as that moment, whatever the server’s time zone', async () => {
  const database = new URL(process.env.DATABASE_URL ?? '').pathname.slice(1);
  await asOwner(`ALTER DATABASE "${database}" SET timezone = 'Asia/Tokyo'`);
  await db.$disconnect(); // the zone holds from the next connection on
  const at = new Date('2026-01-02T03:04:05.678Z');
  await db.signInLimit.create({ data: { who: 'tz', tries: 1, since: at } });
  // Reading it back through the same adapter would hide the fault: it is wrong both ways.
  const rows =
    await db.$queryRaw`SELECT extract(epoch FROM since)::float8 * 1000 AS ms FROM sign_in_limit WHERE who = 'tz'`;
  expect(rows).toEqual([{ ms: at.getTime() }]);
});

test('R10 statements, locks and idle transactions have a time limit', async () => {
  const rows = await db.$queryRaw<{ name: string; setting: string }[]>`
    SELECT name, setting FROM pg_settings WHERE source = 'client'
      AND name IN ('statement_timeout', 'lock_timeout', 'idle_in_transaction_session_timeout') ORDER BY name`;
  expect(rows.map(({ name }) => name)).toEqual([
    'idle_in_transaction_session_timeout',
    'lock_timeout',
    'statement_timeout',
  ]);
  for (const { setting } of rows) expect(Number(setting)).toBeGreaterThan(0);
});
