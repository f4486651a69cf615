import { z } from 'zod';
import { assessCase } from '@/lib/plant/assess-case';
import { JSON_TYPE, type Operation } from '../operation';
import { assessment, candidates, frame, plateAnswer } from '../schemas/judging';

export const assessOp = {
  action: 'set.assess',
  ...{ method: 'post', path: '/assess', id: 'assess', summary: 'Judges and orders candidates for one set' },
  says: 'As the command does, with the hours and prices of the asker’s site. Nothing is kept.',
  body: { schema: assessCase.meta({ id: 'Case' }), types: JSON_TYPE },
  answers: { 200: { says: 'Every candidate, best first', schema: assessment } },
} as const satisfies Operation;

export const findingsOp = {
  action: 'set.assess',
  ...{ method: 'get', path: '/sets/{tag}/findings', id: 'findings', summary: 'What can go into a set of the register' },
  parts: { tag: 'The set’s tag' },
  query: z.strictObject({
    limit: z.coerce.number().int().min(1).max(200).optional().describe('At most so many; 50 where not told'),
  }),
  answers: { 200: { says: 'Candidates that could go in, best first, with their findings', schema: candidates } },
} as const satisfies Operation;

export const frameOp = {
  action: 'frame.read',
  ...{ method: 'get', path: '/frames/{frame}', id: 'frame', summary: 'The mounting of a frame' },
  parts: { frame: '184TC, 112M, FF165 …' },
  query: z.strictObject({
    mounting: z.string().max(40).optional().describe('IM B35 …'),
    poles: z.coerce
      .number({ error: 'must be an even number from 2 up' })
      .optional()
      .describe('Where the shaft depends on them'),
    system: z
      .string()
      .toUpperCase()
      .pipe(z.enum(['NEMA', 'IEC']))
      .optional()
      .describe('NEMA or IEC, where the name leaves it open'),
  }),
  answers: { 200: { says: 'Its dimensions, each with its source', schema: frame } },
} as const satisfies Operation;

export const plateOp = {
  action: 'set.assess',
  ...{ method: 'post', path: '/plate', id: 'plate', summary: 'Reads the text of a nameplate' },
  body: { schema: z.strictObject({ text: z.string().min(1).max(64_000) }), types: JSON_TYPE },
  answers: { 200: { says: 'The motor as far as it was read, and what was not', schema: plateAnswer } },
} as const satisfies Operation;
