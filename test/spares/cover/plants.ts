import { type Motor, motor as motorSchema } from '@/lib/plant/motor';
import { type PumpSet, set as setSchema } from '@/lib/plant/set';
import { demoPlant } from '@/seed/plant/plant';

/** A plant of the demo's own rules: its sets by tag, and its spare motors. */
export function somePlant(size: { seed: number; sets: number; spares: number }) {
  const plant = demoPlant(size);
  const plates = new Map(plant.motors.map(({ number, plate }) => [number, { id: number, ...plate }]));
  const installed = new Set(plant.sets.map(({ motor }) => motor));
  const sets = new Map<string, { set: PumpSet }>();
  for (const { input, motor } of plant.sets) {
    const set = setSchema.parse({ ...input, failed: motor === null ? null : plates.get(motor) });
    sets.set(set.tag, { set });
  }
  const shelf: Motor[] = [];
  for (const [number, plate] of plates) if (!installed.has(number)) shelf.push(motorSchema.parse(plate));
  return { sets, shelf };
}
