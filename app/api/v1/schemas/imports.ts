import { z } from 'zod';
import { RUN_STATUSES } from '@/lib/register/import/run';
import { ROW_OUTCOMES } from '@/lib/register/queries/import-rows';

const count = z.number().int();

export const importAnswer = z
  .strictObject({
    id: z.uuid(),
    fileName: z.string(),
    kind: z.enum(['sets', 'motors']),
    status: z.enum(RUN_STATUSES),
    says: z.string().nullable().describe('Why it failed, or was not taken back'),
    counts: z.strictObject({
      rows: count,
      done: count,
      new: count,
      changed: count,
      same: count,
      passed: count,
      refused: count,
      applied: count,
    }),
    written: z
      .strictObject({
        format: z.enum(['csv', 'xlsx']),
        encoding: z.string().nullable(),
        delimiter: z.string().nullable(),
        decimal: z.string().nullable(),
        sheet: z.string().nullable(),
      })
      .nullable()
      .describe('How the file is written, as it was found'),
    columns: z.array(
      z.strictObject({
        index: count,
        heading: z.string(),
        field: z.string().nullable().describe('Null: it is left out'),
        unit: z.string().nullable(),
        because: z.string().nullable(),
        examples: z.array(z.string()),
      }),
    ),
    changeId: z.uuid().nullable(),
  })
  .meta({ id: 'Import' });

/** What a person said of the columns; those that are not named stay as they were found. */
export const confirmed = z.strictObject({
  columns: z
    .array(
      z.strictObject({
        index: z.number().int().min(0).max(500),
        field: z.string().max(60).nullable(),
        unit: z.string().max(20).nullish(),
      }),
    )
    .max(500)
    .nullish(),
  mounting: z.enum(['foot', 'face', 'foot-and-face']).nullish().describe('For rows that do not tell it'),
  area: z.string().min(1).max(80).nullish(),
  store: z.string().min(1).max(80).nullish(),
  keepUnknownWords: z.boolean().nullish(),
  makePlaces: z
    .boolean()
    .nullish()
    .describe('Areas, stores and shelves that are not there are made; true where not told'),
});

export const step = z.strictObject({ step: z.enum(['apply', 'cancel', 'resume', 'undo']) });

export const importRow = z
  .strictObject({
    line: count,
    outcome: z.enum(ROW_OUTCOMES),
    key: z.string().nullable(),
    changes: z.array(
      z.strictObject({ thing: z.string(), field: z.string(), from: z.string().nullable(), to: z.string().nullable() }),
    ),
    problems: z.array(z.strictObject({ field: z.string().nullable(), value: z.string(), says: z.string() })),
  })
  .meta({ id: 'ImportRow' });
