import type { MotorInput } from '@/lib/plant/motor';
import type { PumpSetInput } from '@/lib/plant/set';

/** What the register keeps of a set: the contract's words, and what stands beside them. Null: not known. */
export interface KeptSet {
  set: Omit<PumpSetInput, 'failed'>;
  service: string | null;
  criticality: number | null;
  /** The area's name; `set.surroundings` are the set's own, the area's not counted. */
  area: string | null;
  pump: { description: string; kind: string | null; maker: string | null; serial: string | null } | null;
  supplyName: string | null;
  note: string | null;
  /** The plant number of the motor now in it. */
  holds: string | null;
}

/** What the register keeps of a motor. Power as stamped, in hp or kW. */
export interface KeptMotor {
  motor: MotorInput;
  place: 'in-set' | 'on-shelf' | 'at-repair' | 'on-order' | 'scrapped';
  /** The tag of the set that it is in. */
  setTag: string | null;
  store: string | null;
  shelf: string | null;
  maker: string | null;
  serial: string | null;
  condition: string | null;
  rewinds: number | null;
  note: string | null;
  unread: string | null;
}

/**
 * What the register holds for a row. Of a row of sets: the set with its tag and the motor with its plant number, or,
 * where the row tells no plant number, the motor in that set. Of a row of motors: the motor with its plant number.
 */
export interface Existing {
  set: KeptSet | null;
  motor: KeptMotor | null;
}
