import { createHash } from 'node:crypto';
import { beforeAll, describe, expect, test } from 'vitest';
import type { Actor } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import { keepPicture, type NewPicture } from '@/lib/register/commands/keep-picture';
import { retirePicture } from '@/lib/register/commands/retire-picture';
import { motorHistory } from '@/lib/register/queries/motor-history';
import { pictureById } from '@/lib/register/queries/picture-by-id';
import { MOST_PICTURES, picturesOf } from '@/lib/register/queries/pictures-of';
import { jpeg } from '../picture/made';
import { addSets, colleague, got, plainSet, smallPlant } from './plant';

let here: Awaited<ReturnType<typeof smallPlant>>;
let technician: Actor;
beforeAll(async () => {
  here = await smallPlant();
  technician = await colleague(here.actor.siteId, 'technician', 'Bo Lund');
});

const motor = (number: string) => ({ thing: 'motor' as const, id: got(here.motors, number) });
const set = (tag: string) => ({ thing: 'set' as const, id: got(here.sets, tag) });

async function keep(of: NewPicture['of'], seed: number, caption: string | null = null, actor = technician) {
  const done = await keepPicture(actor, { of, caption, bytes: await jpeg({ widthPx: 64, heightPx: 48, seed }) });
  if (done.outcome === 'refused') throw new Error(done.why);
  return done;
}
const audits = (action: string, thingId: string) =>
  db.auditEntry.findMany({ where: { siteId: here.actor.siteId, action, thingId }, orderBy: { at: 'asc' } });

test('S16 a technician keeps a photograph of a plate: a new picture under a random id, with its sum and its line in the audit', async () => {
  const of = motor('M-1');
  const { outcome, pictureId } = await keep(of, 1, '  Plate, drive end  ');
  expect(outcome).toBe('saved');
  const row = await db.attachment.findFirstOrThrow({ where: { id: pictureId } });
  expect(row).toMatchObject({
    siteId: technician.siteId,
    motorId: of.id,
    setId: null,
    byId: technician.userId,
    caption: 'Plate, drive end',
    mediaType: 'image/webp',
    retiredAt: null,
  });
  expect(row.sha256).toBe(createHash('sha256').update(row.content).digest('hex'));
  expect(Buffer.from(row.content).subarray(8, 12).toString()).toBe('WEBP');
  expect(await audits('picture.keep', of.id)).toMatchObject([
    {
      thing: 'motor',
      byId: technician.userId,
      before: null,
      after: { pictureId, caption: 'Plate, drive end', sha256: row.sha256, bytes: row.content.length },
    },
  ]);
  expect(await picturesOf(technician, of)).toEqual([
    { pictureId, at: row.at, by: 'Bo Lund', caption: 'Plate, drive end' },
  ]);
  expect(await pictureById(technician, pictureId)).toEqual({ mediaType: 'image/webp', content: row.content });
  expect((await motorHistory(technician, of.id)).map((line) => line.kind === 'change' && line.action)).toContain(
    'picture.keep',
  );
});

test('the same picture twice on one thing is kept once, on two things twice', async () => {
  const first = await keep(set('P-101'), 2);
  expect(await keep(set('P-101'), 2, 'Again')).toEqual({ outcome: 'same', pictureId: first.pictureId });
  expect((await keep(motor('M-2'), 2)).outcome).toBe('saved');
  expect(await picturesOf(technician, set('P-101'))).toHaveLength(1);
  expect(await audits('picture.keep', set('P-101').id)).toHaveLength(1);
});

test('sent five times at once it is kept once', async () => {
  const all = await Promise.all([1, 2, 3, 4, 5].map(() => keep(set('P-102'), 3)));
  expect(all.filter(({ outcome }) => outcome === 'saved')).toHaveLength(1);
  expect(new Set(all.map(({ pictureId }) => pictureId)).size).toBe(1);
  expect(await db.attachment.count({ where: { setId: set('P-102').id } })).toBe(1);
});

test('the desk retires a photograph: it is in no list and at no address, and the same one can be kept anew', async () => {
  const of = motor('M-7');
  const { pictureId } = await keep(of, 4, 'Wrong motor');
  await expect(retirePicture(technician, pictureId)).rejects.toThrow('Not allowed: picture.retire');
  expect(await retirePicture(here.actor, pictureId)).toEqual({ outcome: 'saved' });
  expect(await picturesOf(technician, of)).toEqual([]);
  expect(await pictureById(technician, pictureId)).toBeNull();
  expect(await audits('picture.retire', of.id)).toMatchObject([
    { thing: 'motor', byId: here.actor.userId, before: { pictureId, caption: 'Wrong motor' }, after: null },
  ]);
  expect(await retirePicture(here.actor, pictureId)).toMatchObject({ outcome: 'refused' });
  expect(await audits('picture.retire', of.id)).toHaveLength(1);
  const anew = await keep(of, 4);
  expect([anew.outcome, anew.pictureId === pictureId]).toEqual(['saved', false]);
  expect(await db.attachment.count({ where: { motorId: of.id } })).toBe(2);
});

describe('what is refused leaves nothing', () => {
  const none = '00000000-0000-4000-8000-000000000000';
  test.each<[string, Partial<NewPicture>, string]>([
    ['text dressed as a picture', { bytes: new TextEncoder().encode('<svg/>') }, 'drawing'],
    ['a caption over 200 characters', { caption: 'x'.repeat(201) }, 'caption'],
    ['a caption of two lines', { caption: 'one\ntwo' }, 'caption'],
    ['a motor that is not there', { of: { thing: 'motor', id: none } }, 'unknown'],
    ['a set that is not there', { of: { thing: 'set', id: none } }, 'unknown'],
    ['an id that is none', { of: { thing: 'set', id: "1' OR 1=1" } }, 'unknown'],
  ])('%s', async (_name, more, why) => {
    const before = await Promise.all([db.attachment.count(), db.auditEntry.count()]);
    const whole = { of: motor('M-8'), caption: null, bytes: await jpeg({ seed: 9 }), ...more };
    expect(await keepPicture(technician, whole)).toEqual({ outcome: 'refused', why });
    expect(await Promise.all([db.attachment.count(), db.auditEntry.count()])).toEqual(before);
  });

  test('a set that is retired', async () => {
    const id = got(await addSets(here.actor, plainSet('P-103')), 'P-103');
    const whole = { of: { thing: 'set' as const, id }, caption: null, bytes: await jpeg() };
    await db.pumpSet.updateMany({ where: { id }, data: { retiredAt: new Date() } });
    expect(await keepPicture(technician, whole)).toEqual({ outcome: 'refused', why: 'unknown' });
    await db.pumpSet.updateMany({ where: { id }, data: { retiredAt: null } });
    expect(await keepPicture(technician, whole)).toMatchObject({ outcome: 'saved' });
  });
});

test('R10 no more are kept of one thing than a list shows', async () => {
  const of = motor('M-8');
  const { pictureId } = await keep(of, 10);
  const { id: _id, ...row } = await db.attachment.findFirstOrThrow({ where: { id: pictureId } });
  await db.attachment.createMany({
    data: Array.from({ length: MOST_PICTURES - 1 }, (_, at) => ({ ...row, sha256: `${at}` })),
  });
  expect(await picturesOf(technician, of)).toHaveLength(MOST_PICTURES);
  const another = { of, caption: null, bytes: await jpeg({ seed: 11 }) };
  expect(await keepPicture(technician, another)).toEqual({ outcome: 'refused', why: 'full' });
  expect((await keep(of, 10)).outcome).toBe('same');
  await retirePicture(here.actor, pictureId);
  expect(await keepPicture(technician, another)).toMatchObject({ outcome: 'saved' });
});
