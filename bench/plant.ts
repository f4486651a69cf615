import { type Motor, motor } from '@/lib/plant/motor';
import { type PumpSet, set } from '@/lib/plant/set';
import { demoPlant } from '../seed/plant/plant';

/** A plant of the demo's own rules at any size, the same for the same seed, as the engine takes it. */
export function plant(size: { sets: number; spares: number }): { sets: PumpSet[]; motors: Motor[] } {
  const demo = demoPlant({ seed: 7, ...size });
  const plates = new Map(demo.motors.map(({ number, plate }) => [number, { id: number, ...plate }]));
  const installed = new Set(demo.sets.map((one) => one.motor));
  return {
    sets: demo.sets.map(({ input, motor: number }) =>
      set.parse({ ...input, failed: number === null ? null : (plates.get(number) ?? null) }),
    ),
    motors: demo.motors
      .filter(({ number }) => !installed.has(number))
      .map(({ number, plate }) => motor.parse({ id: number, ...plate })),
  };
}
