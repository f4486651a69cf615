import type { PackSet } from './pack';
import { motorIn, type PlantInHand } from './plant-in-hand';

/** What a list of sets tells of one: enough to be found by, long before the whole plant is in hand. */
export interface SetLine extends Pick<PackSet, 'id' | 'tag' | 'code' | 'service' | 'area' | 'pump'> {
  /** Plant number and frame of the motor in it. */
  motor: string | null;
  frame: string | null;
  /** Since when it is down, ISO 8601; null: no fault is open. */
  downSince: string | null;
}

/** A plant in brief. */
export interface Contents {
  sets: SetLine[];
  motorCount: number;
}

export function contentsOf(plant: PlantInHand): Contents {
  const sets = [...plant.sets.values()].map(({ id, tag, code, service, area, pump, faults }) => {
    const motor = motorIn(plant, id);
    return {
      ...{ id, tag, code, service, area, pump },
      motor: motor?.number ?? null,
      frame: motor?.motor.frame ?? null,
      downSince: faults[0]?.at ?? null,
    };
  });
  return { sets, motorCount: plant.motors.size };
}
