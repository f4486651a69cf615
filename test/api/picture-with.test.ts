import { beforeAll, describe, expect, test } from 'vitest';
import { pictureWith } from '@/app/pictures/picture-with';
import type { Actor } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import { jpeg } from '../picture/made';
import { addMotors, got, plate } from '../register/plant';
import { signedIn } from './signed-in';

let planner: Actor;
let motorId: string;
beforeAll(async () => {
  planner = { ...(await signedIn('planner')).actor };
  motorId = got(await addMotors(planner, { motor: plate('M-1'), at: { place: 'at-repair' } }), 'M-1');
});

const named = (bytes: BlobPart) => new File([bytes], 'plate.jpg', { type: 'image/jpeg' });
function formOf(...files: (File | string)[]): FormData {
  const form = new FormData();
  for (const file of files) form.append('picture', file);
  return form;
}
const withForm = (form: FormData, actor = planner) =>
  pictureWith(actor, { thing: 'motor', id: motorId }, form, 'Plate');

describe('a picture that came with a motor’s form', () => {
  test('is kept once as the plate of that motor', async () => {
    const file = named(await jpeg({ widthPx: 64, heightPx: 48, seed: 7 }));
    expect(await withForm(formOf(new File([], ''), file))).toBe('kept');
    expect(await withForm(formOf(file))).toBe('same');
    const kept = await db.attachment.findMany({ where: { motorId }, select: { caption: true, siteId: true } });
    expect(kept).toEqual([{ caption: 'Plate', siteId: planner.siteId }]);
  });

  test('is none where nothing was chosen, or words stand in its place', async () => {
    expect(await withForm(formOf())).toBeNull();
    expect(await withForm(formOf(new File([], ''), new File([], '')))).toBeNull();
    expect(await withForm(formOf('plate.jpg'))).toBeNull();
  });

  test.each<[string, () => Promise<FormData>, string]>([
    ['two of them', async () => formOf(named(await jpeg({ seed: 8 })), named(await jpeg({ seed: 9 }))), 'several'],
    ['more than 15 MB', async () => formOf(named(new Uint8Array(15 * 1024 * 1024 + 1))), 'large'],
    ['S16 an SVG called plate.jpg', async () => formOf(named('<svg onload="alert(1)"/>')), 'drawing'],
  ])('%s: told, and not kept', async (_name, form, word) => {
    const before = await db.attachment.count();
    expect(await withForm(await form())).toBe(word);
    expect(await db.attachment.count()).toBe(before);
  });

  test('S26 of a motor of another site is not kept', async () => {
    const stranger = (await signedIn('administrator')).actor;
    const before = await db.attachment.count();
    expect(await withForm(formOf(named(await jpeg({ seed: 10 }))), stranger)).toBe('unknown');
    expect(await db.attachment.count()).toBe(before);
  });
});
