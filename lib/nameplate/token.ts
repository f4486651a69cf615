import type { FieldName } from './field-name';

/** A piece of a line: `at` and `end` are its place, `cell` counts the wide gaps, tabs and commas before it. */
export type Token = { at: number; end: number; cell: number } & (
  | {
      kind: 'measure';
      field: FieldName;
      unit: string /** A colon or equals sign: its figure follows. */;
      isFirm: boolean;
    }
  | { kind: 'figure'; text: string }
  | { kind: 'fact'; field: FieldName; text: string }
  | { kind: 'rest' }
);
