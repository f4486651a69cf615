import type { z } from 'zod';
import { jsonText } from './json-text';
import { type Reading, read } from './reading';

/** As `read`, from text that should be one JSON value. */
export function readJson<T extends z.ZodType>(schema: T, text: string): Reading<z.output<T>> {
  const input = jsonText(text);
  return input.ok ? read(schema, input.value) : input;
}
