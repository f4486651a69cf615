import { beforeEach, describe, expect, test } from 'vitest';
import { registerPlaces } from '@/lib/register/commands/register-places';
import { addMotors, addSets, got, plainSet, plate } from '../register/plant';
import { signedIn } from './signed-in';
import { ask } from './v1';

let planner: Awaited<ReturnType<typeof signedIn>>;
let sets: Map<string, string>;
let motors: Map<string, string>;
let shelfId: string;

beforeEach(async () => {
  planner = await signedIn('planner');
  const { actor } = planner;
  const { shelves } = await registerPlaces(actor, { areas: [], stores: [{ name: 'Main', shelves: ['A1', 'A2'] }] });
  shelfId = got(shelves, 'Main / A1');
  sets = await addSets(actor, plainSet('P-101'), plainSet('P-102'));
  motors = await addMotors(
    actor,
    { motor: plate('M-1'), at: { place: 'in-set', setId: got(sets, 'P-101') } },
    { motor: plate('M-7'), at: { place: 'on-shelf', shelfId } },
  );
});

const by = (more: Parameters<typeof ask>[2] = {}) => ({ cookie: planner.cookie, ...more });
const tagAt = async (path: string) => String((await ask('GET', path, by())).headers.get('etag'));
const change = async (path: string, body: unknown) =>
  ask('PATCH', path, by({ body, headers: { 'if-match': await tagAt(path) } }));
const swap = () => ({
  ...{ setId: got(sets, 'P-101'), motorInId: got(motors, 'M-7'), motorOutId: got(motors, 'M-1'), fromSetId: null },
  ...{ outTo: { place: 'at-repair' }, why: 'Bearing', note: null, workDone: [], checks: [] },
});

describe('ETag', () => {
  test('it changes with everything that is told, so that nobody keeps the motor that came out', async () => {
    const before = await tagAt('/sets/P-101');
    const headers = { 'if-none-match': before };
    expect((await ask('GET', '/sets/P-101', by({ headers }))).status).toBe(304);
    const key = { 'idempotency-key': crypto.randomUUID() };
    expect((await ask('POST', '/swaps', by({ body: swap(), headers: key }))).status).toBe(201);
    const after = await ask('GET', '/sets/P-101', by({ headers }));
    expect([after.status, after.body.motorNumber]).toEqual([200, 'M-7']);
    const late = await ask('PATCH', '/sets/P-101', by({ body: { note: 'x' }, headers: { 'if-match': before } }));
    expect([late.status, late.body.stands.motorNumber]).toEqual([412, 'M-7']);
    expect(late.headers.get('etag')).toBe(after.headers.get('etag'));
  });

  test('what is entered comes with the tag under which it is read', async () => {
    const made = await ask('POST', '/motors', by({ body: { ...plate('M-9'), place: 'on-shelf', shelfId } }));
    expect(made.headers.get('etag')).toBe(await tagAt('/motors/M-9'));
    expect(made.headers.get('etag')).toMatch(/^"[\w-]+"$/);
  });

  test('R3 of five changes of a motor at once from one reading exactly one stands', async () => {
    const headers = { 'if-match': await tagAt('/motors/M-7') };
    const done = await Promise.all(
      [1, 2, 3, 4, 5].map((massKg) => ask('PATCH', '/motors/M-7', by({ body: { massKg }, headers }))),
    );
    expect(done.map(({ status }) => status).sort()).toEqual([200, 412, 412, 412, 412]);
    const { record } = done.find(({ status }) => status === 200)?.body ?? {};
    for (const { status, body } of done) if (status === 412) expect(body.stands.record.massKg).toBe(record.massKg);
  });

  test('a change that changes nothing leaves the tag', async () => {
    const before = await tagAt('/motors/M-7');
    const { status, headers } = await change('/motors/M-7', { frame: '184T' });
    expect([status, headers.get('etag')]).toEqual([200, before]);
  });
});

describe('merge patch', () => {
  test('one key of a group is changed, and the others stay', async () => {
    await change('/sets/P-101', { pump: { description: 'lobe pump' }, supplyName: 'MCC 2' });
    const { body } = await change('/sets/P-101', { pump: { serial: 'L-77' }, supply: { volts: 480 } });
    expect(body.record.pump).toEqual({ description: 'lobe pump', serial: 'L-77' });
    expect(body.record.supply).toMatchObject({ volts: 480, hertz: 60 });
    expect(body.record.supplyName).toBe('MCC 2');
  });

  test('null takes a key or a group out; what no record is without cannot be taken out', async () => {
    await change('/sets/P-101', { pump: { description: 'lobe pump', serial: 'L-77' } });
    const { body } = await change('/sets/P-101', { pump: null, base: { shimLimitMm: null } });
    expect(body.record.pump).toBeUndefined();
    expect(body.record.base).toEqual({ shimsPresentMm: 1.5 });
    const bare = await change('/sets/P-101', { pump: { serial: 'L-77' } });
    expect(bare.body.problems).toMatchObject([{ path: 'pump.description' }]);
    for (const key of ['tag', 'mounting']) {
      const refused = await change('/sets/P-101', { [key]: null });
      expect([refused.status, refused.body.problems[0].path]).toEqual([422, key]);
    }
  });

  test('a part of a classification is changed; of another scheme, the keys of the first are taken out', async () => {
    const iec = { scheme: 'IEC', zone: 22, group: 'IIIB', tempC: 125 };
    await change('/sets/P-101', { surroundings: { classification: iec } });
    const cooler = await change('/sets/P-101', { surroundings: { classification: { tempC: 100 } } });
    expect(cooler.body.record.surroundings.classification).toEqual({ ...iec, tempC: 100 });
    const nec = { scheme: 'NEC', class: 2, division: 2, groups: ['G'], tempCode: 'T4' };
    const mixed = await change('/sets/P-101', { surroundings: { classification: nec } });
    expect(mixed.body.problems.map(({ path }: { path: string }) => path)).toContain('surroundings.classification.zone');
    const classification = { ...nec, zone: null, group: null, tempC: null };
    const other = await change('/sets/P-101', { surroundings: { classification } });
    expect(other.body.record.surroundings.classification).toEqual(nec);
    const wrong = await change('/sets/P-101', { surroundings: { classification: { tempCode: 'T9' } } });
    expect(wrong.body.problems).toMatchObject([{ path: 'surroundings.classification.tempCode' }]);
  });

  test('S1 an unknown key is refused at any depth, though it is sent as null', async () => {
    for (const [body, path] of [
      [{ colour: null }, 'colour'],
      [{ supply: { drive: { colour: 1 } } }, 'supply.drive.colour'],
      [{ retiredAt: null }, 'retiredAt'],
      [JSON.parse('{"__proto__":{"tag":"X"}}'), '__proto__'],
    ] as const) {
      const refused = await change('/sets/P-101', body);
      expect([refused.status, refused.body.problems[0].path]).toEqual([422, path]);
    }
  });

  test('texts are kept without the blanks around them, and make no other tag', async () => {
    expect((await change('/sets/P-102', { tag: ' P-101 ' })).body.problems).toMatchObject([{ path: 'tag' }]);
    const { body } = await change('/sets/P-102', { tag: ' P-109 ', service: ' Whey ' });
    expect(body.record).toMatchObject({ tag: 'P-109', service: 'Whey' });
    const made = await ask('POST', '/sets', by({ body: { tag: ' P-110', mounting: 'foot', note: ' a\nb ' } }));
    expect(made.body.record).toMatchObject({ tag: 'P-110', note: 'a\nb' });
    expect(made.headers.get('location')).toBe('/api/v1/sets/P-110');
  });

  test('a motor moves with the place it leaves and the place it takes', async () => {
    expect((await change('/motors/M-7', { place: 'at-repair' })).body.problems).toMatchObject([{ path: 'shelfId' }]);
    const moved = await change('/motors/M-7', { place: 'at-repair', shelfId: null });
    expect(moved.body).toMatchObject({ store: null, shelf: null, record: { place: 'at-repair' } });
    const held = await change('/motors/M-7', { place: 'in-set', setId: got(sets, 'P-101') });
    expect(held.body.problems).toMatchObject([{ path: 'setId', value: 'P-101' }]);
    const into = await change('/motors/M-7', { place: 'in-set', setId: got(sets, 'P-102') });
    expect(into.body.setTag).toBe('P-102');
  });
});

describe('swaps', () => {
  test('R2 a repeat is answered as the first was, wherever the motors are by then', async () => {
    const headers = { 'idempotency-key': crypto.randomUUID() };
    const first = await ask('POST', '/swaps', by({ body: swap(), headers }));
    expect(first.status).toBe(201);
    await change('/motors/M-7', { place: 'scrapped', setId: null });
    const again = await ask('POST', '/swaps', by({ body: swap(), headers }));
    expect([again.status, again.body, again.headers.get('location')]).toEqual([
      201,
      first.body,
      first.headers.get('location'),
    ]);
    const other = await ask('POST', '/swaps', by({ body: { ...swap(), why: 'Seal' }, headers }));
    expect([other.status, other.body.problems[0].path]).toEqual([422, 'Idempotency-Key']);
  });

  test('R2 R4 sent five times at once it is one swap; five of five who take one motor, one', async () => {
    const headers = { 'idempotency-key': crypto.randomUUID() };
    const same = await Promise.all([1, 2, 3, 4, 5].map(() => ask('POST', '/swaps', by({ body: swap(), headers }))));
    expect(same.map(({ status }) => status)).toEqual([201, 201, 201, 201, 201]);
    expect(new Set(same.map(({ body }) => JSON.stringify(body))).size).toBe(1);
    const back = {
      ...{ ...swap(), motorInId: got(motors, 'M-1'), motorOutId: got(motors, 'M-7') },
      outTo: { place: 'on-shelf', shelfId },
    };
    await change('/motors/M-1', { place: 'on-shelf', shelfId });
    const each = await Promise.all(
      [1, 2, 3, 4, 5].map(() =>
        ask('POST', '/swaps', by({ body: back, headers: { 'idempotency-key': crypto.randomUUID() } })),
      ),
    );
    expect(each.map(({ status }) => status).sort()).toEqual([201, 409, 409, 409, 409]);
  });

  test('S1 S26 what is not of this site, and what contradicts itself, is refused at its key', async () => {
    const send = async (more: object, key: string = crypto.randomUUID()) => {
      const done = await ask(
        'POST',
        '/swaps',
        by({ body: { ...swap(), ...more }, headers: { 'idempotency-key': key } }),
      );
      return [done.status, done.body.problems?.[0]?.path];
    };
    expect(await send({ setId: crypto.randomUUID() })).toEqual([422, 'setId']);
    expect(await send({ motorInId: crypto.randomUUID() })).toEqual([422, 'motorInId']);
    expect(await send({ motorInId: got(motors, 'M-1') })).toEqual([422, 'motorInId']);
    expect(await send({ outTo: null })).toEqual([422, 'outTo']);
    expect(await send({ verdict: 'straight-swap' })).toEqual([422, 'verdict']);
    expect(await send({}, 'not a uuid')).toEqual([400, undefined]);
    expect((await ask('GET', '/sets/P-101', by())).body.motorNumber).toBe('M-1');
  });
});
