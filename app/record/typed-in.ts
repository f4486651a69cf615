import type { Field } from '@/lib/fields/field';
import type { Typed } from '@/lib/fields/read-form';
import { severalLines } from '../form-text';
import { oneLine } from '../paths';

/** More than any field takes; the field itself says what it may be. */
const LONGEST = 20_000;
const IS_RATING = /^ratings\.\d{1,2}\.[a-z]+$/;

/** The texts of a form by the names of its inputs; ticks of one name stand together, parted by commas. */
export function typedIn(form: FormData, fields: readonly Field[], more: readonly string[]): Typed {
  const texts = (name: string) =>
    form.getAll(name).flatMap((value) => (typeof value === 'string' ? [value.slice(0, LONGEST)] : []));
  const own = fields
    .filter(({ path }) => form.has(path))
    .map(({ path, lines, isMany }) => {
      if (isMany)
        return [
          path,
          texts(path)
            .filter((value) => value !== '')
            .join(','),
        ];
      const text = texts(path)[0] ?? '';
      return [path, lines === undefined ? oneLine(text) : severalLines(text).trim()];
    });
  const others = [...new Set(form.keys())]
    .filter((name) => IS_RATING.test(name) || more.includes(name))
    .map((name) => [name, oneLine(texts(name)[0] ?? '')]);
  return Object.fromEntries([...own, ...others]);
}

/** What the fields showed when the form was made, as the form sends it back; nothing that is no text is believed. */
export function baseIn(form: FormData): Typed {
  try {
    const told: unknown = JSON.parse(String(form.get('base') ?? '{}').slice(0, 200_000));
    if (typeof told !== 'object' || told === null) return {};
    return Object.fromEntries(
      Object.entries(told).filter((field): field is [string, string] => typeof field[1] === 'string'),
    );
  } catch {
    return {};
  }
}
