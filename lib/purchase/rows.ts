import type { DemandGroup } from './demand';

/** The head of a specification as a table. */
export const SPECIFICATION_HEAD = ['Group', 'Line', 'What', 'Value', 'Why', 'Asked by', 'Of each set'] as const;

/** What stands for a value that nobody told. */
const TO_BE_TOLD = 'to be told';

/** A specification as rows, a line each, under `SPECIFICATION_HEAD`. */
export const specificationRows = (groups: readonly DemandGroup[]): string[][] =>
  groups.flatMap(({ title, demands }) =>
    demands.map(({ id, label, value, why, criterion, bySet }) => [
      ...[title, id, label, value ?? TO_BE_TOLD, why, criterion ?? ''],
      bySet.map((one) => `${one.tag}: ${one.value ?? TO_BE_TOLD}`).join('; '),
    ]),
  );
