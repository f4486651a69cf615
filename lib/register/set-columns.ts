import type { PumpSet, PumpSetInput } from '@/lib/plant/set';
import { surroundingsTold } from './commands/surroundings-told';
import { toldOnly } from './commands/told-only';

export interface NewPump {
  description: string;
  kind?: string | null;
  maker?: string | null;
  serial?: string | null;
}

/** What the register keeps of a set beside the contract's. */
export interface AboutSet {
  service?: string | null;
  /** 1 stops the plant ... 4 can wait; null: nobody said. */
  criticality?: number | null;
  areaId?: string | null;
  pump?: NewPump | null;
  /** What the supply is called at the plant: "MCC 2, way 14". */
  supplyName?: string | null;
  note?: string | null;
}

export interface SetWhole extends AboutSet {
  set: PumpSet;
  /** As it was told: what is untold of the surroundings is not the same as "unclassified". */
  input: Pick<PumpSetInput, 'surroundings'>;
}

export function supplyColumns({ set, supplyName }: Pick<SetWhole, 'set' | 'supplyName'>) {
  const { phases, volts, hertz, start, ...starter } = set.supply;
  return { name: supplyName ?? null, phases, volts, hertz, start, starter: toldOnly(starter) };
}

export function setColumns({ set, input, service, criticality, areaId, note }: SetWhole) {
  return {
    tag: set.tag,
    service: service ?? null,
    criticality: criticality ?? null,
    areaId: areaId ?? null,
    mounting: set.mounting,
    shaftDirection: set.shaftDirection,
    rotation: set.rotation,
    seat: toldOnly(set.seat),
    coupling: toldOnly(set.coupling),
    base: toldOnly(set.base),
    load: toldOnly(set.load),
    surroundings: surroundingsTold(input.surroundings),
    needs: set.needs,
    note: note ?? null,
  };
}
