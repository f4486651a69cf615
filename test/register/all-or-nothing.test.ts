import { afterEach, expect, test } from 'vitest';
import type { Actor } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import { recordSwap } from '@/lib/register/commands/record-swap';
import { registerMotors } from '@/lib/register/commands/register-motors';
import { registerSets } from '@/lib/register/commands/register-sets';
import { reportFault } from '@/lib/register/commands/report-fault';
import { motorByNumber } from '@/lib/register/queries/motor-by-number';
import { setByTag } from '@/lib/register/queries/set-by-tag';
import { asOwner, besideIt } from '../db/as-owner';
import { got, plainSet, plate, smallPlant } from './plant';

/** Has the database do something when a swap is about to be written, which is after both motors have moved. */
const atTheSwap = (sql: string) =>
  asOwner(`CREATE FUNCTION at_the_swap() RETURNS trigger LANGUAGE plpgsql AS $$ BEGIN ${sql}; RETURN NEW; END $$;
    CREATE TRIGGER at_the_swap BEFORE INSERT ON swap FOR EACH ROW EXECUTE FUNCTION at_the_swap()`);

afterEach(() => asOwner('DROP FUNCTION IF EXISTS at_the_swap CASCADE'));

/** All that a swap writes. */
async function stateOf(actor: Actor) {
  const where = { siteId: actor.siteId };
  const known = await setByTag(actor, 'P-101');
  return {
    inSet: known?.set.failed?.id,
    shims: known?.set.base.shimsPresentMm,
    faults: known?.faults.length,
    out: (await motorByNumber(actor, 'M-1'))?.whereabouts,
    into: (await motorByNumber(actor, 'M-7'))?.whereabouts,
    reading: (await motorByNumber(actor, 'M-7'))?.motor.spare.insulationMohm,
    swaps: await db.swap.count({ where }),
    audit: await db.auditEntry.count({ where }),
  };
}
const told = { insulationMohm: 80, shimsPresentMm: 3 };

test('R1 a swap that fails at its last step leaves nothing half written', async () => {
  const { actor, sets, swap } = await smallPlant();
  await reportFault(actor, { setId: got(sets, 'P-101'), seen: [], says: 'Hums' });
  const before = await stateOf(actor);
  await atTheSwap(`RAISE EXCEPTION 'the disk is full'`);
  const request = swap('P-101', 'M-1', 'M-7', told);
  await expect(recordSwap(actor, request, null)).rejects.toThrow('the disk is full');
  expect(await stateOf(actor)).toEqual(before);
  await asOwner('DROP FUNCTION at_the_swap CASCADE');
  expect(await recordSwap(actor, request, null)).toMatchObject({ outcome: 'saved', isRepeat: false });
  expect(await stateOf(actor)).toMatchObject({ inSet: 'M-7', shims: 3, faults: 0, reading: 80, swaps: 1 });
});

test('R1 a connection killed in the middle of a swap leaves nothing half written, and the next try goes through', async () => {
  const { actor, swap } = await smallPlant();
  const before = await stateOf(actor);
  await atTheSwap('PERFORM pg_sleep(30)');
  const request = swap('P-101', 'M-1', 'M-7', told);
  const broken = expect(recordSwap(actor, request, null)).rejects.toThrow();
  const asleep = () =>
    besideIt((name) => `SELECT pid FROM pg_stat_activity WHERE datname = '${name}' AND wait_event = 'PgSleep'`);
  while ((await asleep()).rows.length === 0) await new Promise((resolve) => setTimeout(resolve, 20));
  await besideIt((name) => `SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE datname = '${name}'`);
  await broken;
  await asOwner('DROP FUNCTION at_the_swap CASCADE');
  expect(await stateOf(actor)).toEqual(before);
  expect(await recordSwap(actor, request, null)).toMatchObject({ outcome: 'saved' });
});

test('a list of sets or motors with one that cannot be is refused whole, each problem with its place in the list', async () => {
  const { actor, shelfId } = await smallPlant();
  const at = { place: 'on-shelf', shelfId } as const;
  const counts = () => Promise.all([db.motor.count(), db.pumpSet.count(), db.auditEntry.count(), db.supply.count()]);
  const before = await counts();
  expect(
    await registerMotors(actor, [
      { motor: plate('M-20'), at },
      { motor: { ...plate('M-21'), poles: 3 }, at },
    ]),
  ).toMatchObject({ outcome: 'refused', problems: [{ path: '1.poles', value: '3' }] });
  expect(
    await registerMotors(actor, [
      { motor: plate('M-22'), at },
      { motor: plate('M-7'), at },
      { motor: plate('M-22'), at },
    ]),
  ).toMatchObject({ outcome: 'refused', problems: [{ path: '1.id' }, { path: '2.id' }] });
  expect(await registerSets(actor, [plainSet('P-300'), plainSet('P-101'), plainSet('P-300')])).toMatchObject({
    outcome: 'refused',
    problems: [{ path: '1.tag' }, { path: '2.tag' }],
  });
  expect(await counts()).toEqual(before);
});
