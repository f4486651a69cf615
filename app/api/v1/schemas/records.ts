import { z } from 'zod';
import { motor } from '@/lib/plant/motor';
import { set } from '@/lib/plant/set';
import { text } from '@/lib/plant/told';
import { PLACES } from '@/lib/plant/whereabouts';
import { asSent } from './as-sent';

const { failed: _failed, ...ofContract } = set.shape;
const words = (most: number) => z.string().trim().min(1).max(most).nullish();
const id = z.uuid().nullish();

/** A set as the register keeps it: the contract's words and what stands beside them. */
export const setRecord = z.strictObject({
  ...ofContract,
  service: words(200).describe('What it serves'),
  criticality: z.number().int().min(1).max(4).nullish().describe('1 stops the plant, 4 can wait'),
  areaId: id.describe('Its surroundings hold where the set tells none of its own'),
  pump: z.strictObject({ description: text(200), kind: words(60), maker: words(80), serial: words(60) }).nullish(),
  supplyName: words(80).describe('What the supply is called: “MCC 2, way 14”'),
  note: words(2_000),
});

/** A motor as the register keeps it: its plate, the tape, where it is. `id` is its plant number. */
export const motorRecord = z.strictObject({
  ...motor.shape,
  maker: words(80),
  serial: words(60),
  condition: words(200),
  rewinds: z.number().int().min(0).max(50).nullish(),
  note: words(2_000),
  unread: words(4_000).describe('What stands on the plate and was not understood'),
  place: z.enum(PLACES),
  setId: id.describe('In a set, and only then'),
  shelfId: id.describe('On a shelf, and only then'),
});

const head = {
  id: z.uuid(),
  version: z.number().int().describe('Counts changes; the ETag is made of it'),
  retiredAt: z.iso.datetime().nullable(),
};

export const setAnswer = z
  .strictObject({
    ...head,
    record: asSent('SetRecord', setRecord),
    motorNumber: z.string().nullable().describe('The motor now in it'),
  })
  .meta({ id: 'Set' });

export const motorAnswer = z
  .strictObject({
    ...head,
    record: asSent('MotorRecord', motorRecord),
    setTag: z.string().nullable(),
    store: z.string().nullable(),
    shelf: z.string().nullable(),
  })
  .meta({ id: 'Motor' });
