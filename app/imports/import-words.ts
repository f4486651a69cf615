import type { ImportKind } from '@/lib/import/field';
import type { RunStatus } from '@/lib/register/import/run';
import type { RowOutcome } from '@/lib/register/queries/import-rows';

export const KIND_WORDS: Readonly<Record<ImportKind, string>> = {
  sets: 'Sets with their motors',
  motors: 'Motors on shelves',
};

export const STATUS_WORDS: Readonly<Record<RunStatus, string>> = {
  uploaded: 'Kept',
  reading: 'Being read',
  ready: 'Waits for its columns to be confirmed',
  checking: 'Every row is looked at',
  checked: 'Waits for your word',
  applying: 'Being written into the register',
  applied: 'In the register',
  undoing: 'Being taken back',
  undone: 'Taken back',
  cancelled: 'Stopped',
  failed: 'Failed',
};

export const OUTCOME_WORDS: Readonly<Record<RowOutcome, string>> = {
  new: 'New',
  changed: 'Changed',
  same: 'Same',
  refused: 'Refused',
  applied: 'Written',
  passed: 'Passed over',
};

export const FORMAT_WORDS = { csv: 'Text with delimiters', xlsx: 'Workbook' } as const;

export const ENCODING_WORDS = {
  'utf-8': 'UTF-8',
  'utf-16le': 'UTF-16, low byte first',
  'utf-16be': 'UTF-16, high byte first',
  'windows-1252': 'Windows-1252',
} as const;

export const DELIMITER_WORDS = { ',': 'comma', ';': 'semicolon', '\t': 'tab', '|': 'upright stroke' } as const;
export const DECIMAL_WORDS = { '.': 'point: 5.5', ',': 'comma: 5,5' } as const;

/** What came of a word given to an import, by the word that stands in the address afterwards. */
export const SAID_WORDS = {
  one: 'Choose one file.',
  kind: 'Say what the rows are: sets or motors.',
  large: 'The file is larger than 25 MB: part it in two.',
  form: 'The form did not arrive as it should: send it again.',
  late: 'It stands otherwise by now: somebody, or the import itself, was quicker.',
  unknown: 'There is no such import.',
  role: 'Your role here does not allow it. Nothing was done.',
  away: 'The register’s database does not answer. Nothing was done; try again in a minute.',
} as const;
export type SaidWord = keyof typeof SAID_WORDS;

/** The sentence for a word in an address; null for any other text. */
export const saidBy = (word: unknown): string | null =>
  typeof word === 'string' && Object.hasOwn(SAID_WORDS, word) ? SAID_WORDS[word as SaidWord] : null;
