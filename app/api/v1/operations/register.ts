import { z } from 'zod';
import { PLACES } from '@/lib/plant/whereabouts';
import { swapRequest } from '@/lib/register/commands/swap-request';
import { JSON_TYPE, type Operation, PATCH_TYPES } from '../operation';
import { VERDICTS } from '../schemas/judging';
import { part, partOf } from '../schemas/part';
import { patchOf } from '../schemas/patch-of';
import { motorAnswer, motorRecord, setAnswer, setRecord } from '../schemas/records';

const q = z.string().max(200).optional().describe('Words that it is known by');

const { key: _key, ...swap } = swapRequest.shape;
const newSwap = z.strictObject(swap).meta({ id: 'NewSwap' });

const TAG = { tag: 'The set’s tag' };
const NUMBER = { number: 'The motor’s plant number' };
const LATER = 'It was changed since; “stands” is how it is now';

export const listSetsOp = {
  action: 'register.read',
  ...{ method: 'get', path: '/sets', id: 'listSets', summary: 'The sets in use, by their tags' },
  query: z.strictObject({ ...part, q }),
  answers: { 200: { says: 'A part of the list', schema: partOf(setAnswer) } },
} as const satisfies Operation;

export const makeSetOp = {
  action: 'set.edit',
  ...{ method: 'post', path: '/sets', id: 'makeSet', summary: 'Enters a set with its pump and its supply' },
  body: { schema: setRecord.meta({ id: 'NewSet' }), types: JSON_TYPE },
  once: 'may',
  answers: { 201: { says: 'It is in the register', schema: setAnswer, hasTag: true, hasLocation: true } },
} as const satisfies Operation;

export const readSetOp = {
  action: 'register.read',
  ...{ method: 'get', path: '/sets/{tag}', id: 'readSet', summary: 'One set', parts: TAG },
  answers: { 200: { says: 'The set', schema: setAnswer, hasTag: true } },
} as const satisfies Operation;

export const changeSetOp = {
  action: 'set.edit',
  ...{ method: 'patch', path: '/sets/{tag}', id: 'changeSet', summary: 'Changes a set', parts: TAG, isGuarded: true },
  says: 'The keys that are sent are changed, null makes one not known (RFC 7396). With a classification of the other scheme the keys of the first are sent as null.',
  body: { schema: patchOf(setRecord).meta({ id: 'SetPatch' }), types: PATCH_TYPES },
  answers: { 200: { says: 'As it stands now', schema: setAnswer, hasTag: true }, 412: { says: LATER, hasTag: true } },
} as const satisfies Operation;

export const listMotorsOp = {
  action: 'register.read',
  ...{ method: 'get', path: '/motors', id: 'listMotors', summary: 'The motors, by their plant numbers' },
  query: z.strictObject({
    ...part,
    q,
    place: z.enum(PLACES).optional().describe('Only those that are there'),
  }),
  answers: { 200: { says: 'A part of the list', schema: partOf(motorAnswer) } },
} as const satisfies Operation;

export const makeMotorOp = {
  action: 'motor.edit',
  ...{ method: 'post', path: '/motors', id: 'makeMotor', summary: 'Enters a motor with its plate' },
  body: { schema: motorRecord.meta({ id: 'NewMotor' }), types: JSON_TYPE },
  once: 'may',
  answers: { 201: { says: 'It is in the register', schema: motorAnswer, hasTag: true, hasLocation: true } },
} as const satisfies Operation;

export const readMotorOp = {
  action: 'register.read',
  ...{ method: 'get', path: '/motors/{number}', id: 'readMotor', summary: 'One motor', parts: NUMBER },
  answers: { 200: { says: 'The motor', schema: motorAnswer, hasTag: true } },
} as const satisfies Operation;

export const changeMotorOp = {
  action: 'motor.edit',
  ...{ method: 'patch', path: '/motors/{number}', id: 'changeMotor', summary: 'Changes a motor', parts: NUMBER },
  isGuarded: true,
  says: 'The keys that are sent are changed, null makes one not known (RFC 7396). Ratings are sent all together.',
  body: { schema: patchOf(motorRecord).meta({ id: 'MotorPatch' }), types: PATCH_TYPES },
  answers: { 200: { says: 'As it stands now', schema: motorAnswer, hasTag: true }, 412: { says: LATER, hasTag: true } },
} as const satisfies Operation;

export const recordSwapOp = {
  action: 'swap.record',
  ...{ method: 'post', path: '/swaps', id: 'recordSwap', summary: 'Records that one motor took another’s place' },
  says: 'It is judged here and kept with its judgement. A motor judged unsuitable goes in only with a note who decided.',
  body: { schema: newSwap, types: JSON_TYPE },
  once: 'must',
  answers: {
    201: {
      says: 'It is recorded',
      schema: z.strictObject({
        swapId: z.uuid(),
        verdict: z.enum(VERDICTS).nullable().describe('Null: put in without a judgement'),
      }),
      hasLocation: true,
    },
    409: { says: 'Somebody was first' },
  },
} as const satisfies Operation;
