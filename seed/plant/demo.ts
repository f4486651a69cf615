import type { MotorInput } from '@/lib/plant/motor';
import type { PumpSetInput } from '@/lib/plant/set';
import type { DemoArea } from './areas';

export interface DemoMotor {
  number: string;
  maker: string;
  serial: string;
  plate: Omit<MotorInput, 'id'>;
  place: { set: string } | { store: string; shelf: string } | 'at-repair' | 'on-order' | 'scrapped';
}

export interface DemoSet {
  /** Code of its area. */
  area: string;
  service: string;
  pump: string;
  /** 1 stops the plant, 3 can wait. */
  criticality: 1 | 2 | 3;
  /** The set without its failed motor: that is whatever motor is in it. */
  input: Omit<PumpSetInput, 'failed'>;
  /** Plant number of the motor in it; null when its plate is missing and no motor is on record. */
  motor: string | null;
}

export interface DemoPlant {
  site: string;
  areas: readonly Pick<DemoArea, 'code' | 'name' | 'surroundings'>[];
  stores: readonly { name: string; shelves: readonly string[] }[];
  sets: DemoSet[];
  motors: DemoMotor[];
}

/** Plant numbers are given in the order the motors are bought. */
export interface Numbers {
  next: number;
}

export function nextNumber(numbers: Numbers): string {
  numbers.next += 1;
  return `M-${String(numbers.next).padStart(4, '0')}`;
}
