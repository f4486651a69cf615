import type { FieldName } from '@/lib/nameplate/field-name';
import type { Quantity } from './quantity';

/** Installed sets, each row with its motor's plate; or motors on shelves, at repair, on order. */
export type ImportKind = 'sets' | 'motors';

/** Stable: remembered per site for a heading, so an id is never given another meaning. Unique within a kind. */
export type FieldId = string;

/** What a person is told has changed. */
export type Thing = 'set' | 'motor' | 'pump' | 'supply' | 'area' | 'shelf';

/** One thing that a column can tell. */
export interface Field {
  id: FieldId;
  /** As a person reads it and as an export heads its column, the unit apart. */
  label: string;
  /** The unit of an exported figure; null where the text says it all. */
  unit: string | null;
  /** Headings that people use, in small letters and digits. */
  names: readonly string[];
  thing: Thing;
  /** Where the value stands in a draft and in what is kept; null where it is spread over several places. */
  path: readonly string[] | null;
  shape: Shape;
  /** From 0 to 1: how likely such a text stands in a column of this field, judged by the text alone. */
  holds: (text: string) => number;
}

/** How a cell is read. */
export type Shape =
  | { as: 'text'; most: number; isLong: boolean }
  /** Tags and numbers of things, which a spreadsheet spoils when it takes them for figures or days. */
  | { as: 'name'; most: number }
  | { as: 'figure'; quantity: Quantity }
  /** One of a few words; `words` are each value's spellings, `vague` spellings that do not decide and why. */
  | { as: 'word'; words: Words; vague: Readonly<Record<string, string>>; isNumber: boolean }
  | { as: 'yes-no' }
  | { as: 'day' }
  | { as: 'auxiliaries' }
  | { as: 'rotation' }
  | { as: 'classification'; mayBeUnclassified: boolean }
  /** Read as stamped, together with the other cells of the plate. */
  | { as: 'plate'; fact: FieldName; unit: string }
  /** A whole plate in one cell. */
  | { as: 'plate-text' };

export type Words = Readonly<Record<string, readonly string[]>>;
