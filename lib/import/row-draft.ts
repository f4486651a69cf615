import type { MotorInput } from '@/lib/plant/motor';
import type { PumpSetInput } from '@/lib/plant/set';
import type { FieldId } from './field';
import type { KeptMotor, KeptSet } from './kept';

export const FOR_THE_FILE = 'said for the file';

/** What a person confirmed of a column. `findColumns` answers in this shape. */
export interface Column {
  index: number;
  heading: string;
  field: FieldId | null;
  unit: string | null;
}

/** What a person said for the whole file. Each holds for the rows that tell nothing of their own. */
export interface DraftOptions {
  mounting?: 'foot' | 'face' | 'foot-and-face' | null;
  store?: string | null;
  area?: string | null;
  /** Frames, enclosures, mounting codes and IP codes not known here are kept as they stand, and said. */
  keepUnknownWords?: boolean;
}

/** Only what the row tells, in the words of the contract. */
export type SetDraft = Partial<Omit<KeptSet, 'set' | 'pump' | 'holds'>> & {
  set: Partial<Omit<PumpSetInput, 'failed'>>;
  pump?: Partial<NonNullable<KeptSet['pump']>>;
};
/** Only what the row tells. Without a plant number `motor.id` is missing. */
export type MotorDraft = Partial<Omit<KeptMotor, 'motor' | 'setTag'>> & { motor: Partial<MotorInput> };

export interface CellProblem {
  /** Null: the row as a whole. */
  field: FieldId | null;
  /** As it stands in the cell. */
  value: string;
  says: string;
}

export interface Draft {
  line: number;
  /** The tag of a set, the plant number of a motor. */
  key: string | null;
  set: SetDraft | null;
  motor: MotorDraft | null;
  /** They refuse the row. */
  problems: CellProblem[];
  /** Worth saying, no reason to refuse. */
  notes: CellProblem[];
  /** Why the row is none of data; null: it is one. */
  skip: string | null;
  /** What stands in the cells that tell something, by field. */
  cells: Record<FieldId, string>;
  /**
   * Values that came out of another field's cell, such as the poles in "100L-4": field to that field, or to FOR_THE_FILE
   * where a person said them for the whole file. They fill what is not known and change nothing that is.
   */
  from: Record<FieldId, FieldId>;
}
