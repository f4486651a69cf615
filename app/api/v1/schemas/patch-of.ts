import { z } from 'zod';

type Shape = Record<string, z.ZodType>;

/**
 * What a merge patch of a record may hold (RFC 7396): any key, in a group too, with a value of its kind, or null, which
 * makes it not known. What no record is without is changed and never taken out. Whether the record can stand so is asked
 * of the record.
 */
export const patchOf = (record: z.ZodObject): z.ZodObject =>
  z.strictObject(
    mapped(record.shape, (schema) => (takes(schema, undefined) ? orNull(patchValue(schema)) : schema.optional())),
  );

/** A group is patched key by key, whichever of several it is; any other value is sent whole. */
function patchValue(schema: z.ZodType): z.ZodType {
  const bare = bareOf(schema);
  const groups = bare instanceof z.ZodUnion ? bare.options : [bare];
  if (!groups.every((one) => one instanceof z.ZodObject)) return schema;
  const made = z.strictObject(mapped(together(groups.map(({ shape }) => shape)), (one) => orNull(patchValue(one))));
  return schema.description === undefined ? made : made.describe(schema.description);
}

/** Keys of several shapes; one that stands in more of them takes what any of them takes. */
function together([first = {}, ...more]: readonly z.core.$ZodShape[]): Shape {
  const all = { ...first } as Shape;
  for (const [key, schema] of more.flatMap((shape) => Object.entries(shape) as [string, z.ZodType][]))
    all[key] = all[key] === undefined ? schema : z.union([all[key], schema]);
  return all;
}

const mapped = (shape: z.core.$ZodShape, made: (schema: z.ZodType) => z.ZodType): Shape =>
  Object.fromEntries(Object.entries(shape).map(([key, schema]) => [key, made(schema as z.ZodType)]));

const takes = (schema: z.ZodType, value: unknown) => schema.safeParse(value).success;
const orNull = (schema: z.ZodType) => (takes(schema, null) && takes(schema, undefined) ? schema : schema.nullish());

/** The schema under "may be untold" and transformations. */
function bareOf(schema: z.ZodType): z.ZodType {
  if (schema instanceof z.ZodOptional || schema instanceof z.ZodNullable) return bareOf(schema.unwrap() as z.ZodType);
  return schema instanceof z.ZodPipe ? bareOf(schema.in as z.ZodType) : schema;
}
