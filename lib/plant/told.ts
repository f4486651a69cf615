import { z } from 'zod';

/** A field that may be untold: absent and null both come out as null, "not known". */
export const told = <T extends z.ZodType>(schema: T) => schema.nullish().transform((value) => value ?? null);

/** A group of fields: absent and null both come out as the group with every field untold. */
export const group = <S extends z.core.$ZodShape>(shape: S) => {
  const object = z.strictObject(shape);
  return object.nullish().transform((value): z.output<typeof object> => value ?? object.parse({}));
};

/** A positive, finite quantity of at most `max` in the unit its key names. */
export const upTo = (max: number) => told(z.number().positive().max(max));
/** As `upTo`, zero allowed. */
export const fromZeroTo = (max: number) => told(z.number().nonnegative().max(max));
export const yesNo = () => told(z.boolean());
export const oneOf = <const T extends readonly [string, ...string[]]>(values: T) => told(z.enum(values));
/** Text as stamped: short, one line, of whole characters. */
export const text = (max = 80) =>
  z
    .string()
    .trim()
    .min(1)
    .max(max)
    .regex(/^[^\p{Cc}\p{Cs}\p{Zl}\p{Zp}]*$/u, 'must be one line of plain text');
/** A day as YYYY-MM-DD. */
export const day = () => told(z.iso.date());

/**
 * A check of one key against another runs though other keys were refused, so that every problem is told at once.
 * The value may then hold anything, or nothing, at any key.
 */
export const THOUGH_REFUSED = { when: ({ value }: { value: unknown }) => typeof value === 'object' && value !== null };

/** Whether the first figure is above the second; one that is no figure says nothing. */
export const isAbove = (low: unknown, high: unknown): boolean =>
  typeof low === 'number' && typeof high === 'number' && low > high;
