import { beforeAll, describe, expect, test } from 'vitest';
import { addMotors, addSets, got, plainSet, plate } from '../register/plant';
import { signedIn } from './signed-in';
import { ask } from './v1';

let planner: Awaited<ReturnType<typeof signedIn>>;
beforeAll(async () => {
  planner = await signedIn('planner');
  const load = (shaftKw: number) => ({ kind: 'constant-torque', shaftKw, atPumpRpm: 1750 }) as const;
  const direct = { type: 'coupling', ratio: 1 } as const;
  const one = (tag: string, shaftKw: number, ip: string) => {
    const { set } = plainSet(tag);
    return { set: { ...set, coupling: direct, load: load(shaftKw), surroundings: { ip } } };
  };
  const ids = await addSets(planner.actor, one('P-1', 3.1, 'IP55'), one('P-2', 2, 'IP66'), one('P,3/a', 3, 'IP55'));
  for (const tag of ['P-1', 'P-2', 'P,3/a'])
    await addMotors(planner.actor, { motor: plate(`M ${tag}`), at: { place: 'in-set', setId: got(ids, tag) } });
});
const asked = (...query: [string, string][]) => ask('GET', '/purchase', { cookie: planner.cookie, query });

describe('GET /purchase', () => {
  test('one motor for several sets, as strict as each asks, and judged in each', async () => {
    const { status, body } = await asked(['tag', 'P-1'], ['tag', 'p-2'], ['tag', 'P,3/a']);
    expect(status).toBe(200);
    expect(body.sets).toEqual(['P,3/a', 'P-1', 'P-2']);
    expect(body.asked).toMatchObject({ ip: 'IP66', frame: '184T' });
    expect(body.served.map(({ tag }: { tag: string }) => tag)).toEqual(body.sets);
    const power = body.groups[0].demands.find(({ id }: { id: string }) => id === 'power');
    expect(power).toMatchObject({ value: '5 hp (3.73 kW)', criterion: 'power' });
  });

  test('what it answers can be sent to be judged', async () => {
    const { body } = await asked(['tag', 'P-1']);
    const set = { tag: 'P-1', mounting: 'foot' };
    const judged = await ask('POST', '/assess', { cookie: planner.cookie, body: { set, candidates: [body.asked] } });
    expect(judged.status).toBe(200);
  });

  test('another of its options is asked by its id', async () => {
    const { body } = await asked(['tag', 'P-1']);
    const other = body.options[1].id;
    expect((await asked(['tag', 'P-1'], ['rating', other])).body.asked.id).toBe(other);
    expect((await asked(['tag', 'P-1'], ['rating', 'none'])).status).toBe(404);
  });

  test.each<[string, [string, string][], number]>([
    ['no set is named', [], 422],
    [
      'a key that it has not',
      [
        ['tag', 'P-1'],
        ['colour', 'red'],
      ],
      422,
    ],
    [
      'a rating twice',
      [
        ['tag', 'P-1'],
        ['rating', 'a'],
        ['rating', 'b'],
      ],
      422,
    ],
    ['more sets than it takes', Array.from({ length: 61 }, (_, i) => ['tag', `X-${i}`]), 422],
    [
      'a set that is not there',
      [
        ['tag', 'P-1'],
        ['tag', 'P-9'],
      ],
      404,
    ],
    ['a tag that would be a pattern', [['tag', 'P-_']], 404],
  ])('is refused where %s', async (_, query, status) => {
    expect((await asked(...query)).status).toBe(status);
  });

  test('another site has none of them', async () => {
    const other = await signedIn('planner');
    expect((await ask('GET', '/purchase', { cookie: other.cookie, query: { tag: 'P-1' } })).status).toBe(404);
  });
});
