import { z } from 'zod';
import { ROW_OUTCOMES } from '@/lib/register/queries/import-rows';
import { JSON_TYPE, type Operation } from '../operation';
import { confirmed, importAnswer, importRow, step } from '../schemas/imports';
import { part, partOf } from '../schemas/part';

const ID = { id: 'The import’s id' };

const FILE_TYPES = [
  'text/csv',
  'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet',
  'application/octet-stream',
] as const;

export const startImportOp = {
  action: 'import.run',
  ...{ method: 'post', path: '/imports', id: 'startImport', summary: 'Sends a file of sets or motors' },
  says: 'CSV or XLSX, at most 25 MB, as the body itself. It is read in the background; ask for it again to see how far it is.',
  query: z.strictObject({
    kind: z.enum(['sets', 'motors']).meta({ description: 'What its rows are', example: 'sets' }),
    name: z.string().max(200).optional().meta({ description: 'What the file is called', example: 'plates.csv' }),
  }),
  body: { schema: z.string().meta({ format: 'binary' }), types: FILE_TYPES },
  once: 'may',
  answers: { 202: { says: 'It is kept and waits to be read', schema: importAnswer, hasLocation: true } },
} as const satisfies Operation;

export const readImportOp = {
  action: 'import.run',
  ...{ method: 'get', path: '/imports/{id}', id: 'readImport', summary: 'How far an import is', parts: ID },
  answers: { 200: { says: 'The import', schema: importAnswer } },
} as const satisfies Operation;

export const importRowsOp = {
  action: 'import.run',
  ...{
    method: 'get',
    path: '/imports/{id}/rows',
    id: 'importRows',
    summary: 'What its rows would do, or did',
    parts: ID,
  },
  query: z.strictObject({
    outcome: z.enum(ROW_OUTCOMES).optional().describe('Only rows of which this came'),
    ...part,
  }),
  answers: { 200: { says: 'A part of the rows', schema: partOf(importRow) } },
} as const satisfies Operation;

export const confirmImportOp = {
  action: 'import.run',
  ...{ method: 'post', path: '/imports/{id}/columns', id: 'confirmImport', summary: 'Confirms its columns', parts: ID },
  says: 'Every row is then looked at in the background. Nothing of the register is changed.',
  body: { schema: confirmed, types: JSON_TYPE },
  answers: { 202: { says: 'The rows are looked at', schema: importAnswer }, 409: { says: 'It waits for no columns' } },
} as const satisfies Operation;

export const steerImportOp = {
  action: 'import.run',
  ...{ method: 'post', path: '/imports/{id}/steps', id: 'steerImport', summary: 'Has it written, stopped, taken back' },
  parts: ID,
  body: { schema: step, types: JSON_TYPE },
  answers: {
    202: { says: 'It is done in the background', schema: importAnswer },
    409: { says: 'It stands otherwise' },
  },
} as const satisfies Operation;
