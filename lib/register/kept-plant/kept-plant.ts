import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import type { SiteSettings } from '@/lib/plant/site-settings';
import type { Place } from '@/lib/plant/whereabouts';

/** A set in use, as the judgement takes it: the motor now in it is the failed one. */
export interface KeptSet {
  setId: string;
  /** Of the set's own row. */
  version: number;
  tag: string;
  service: string | null;
  /** 1 stops the plant ... 4 can wait; null: nobody said. */
  criticality: number | null;
  areaId: string | null;
  area: string | null;
  pump: string | null;
  /** The motor in it; null: it stands empty. */
  motorId: string | null;
  set: PumpSet;
}

/** A motor that is not retired, wherever it is. */
export interface KeptMotor {
  motorId: string;
  version: number;
  /** Its `id` is the plant number. */
  motor: Motor;
  place: Place;
  setId: string | null;
  store: string | null;
  shelf: string | null;
  maker: string | null;
  condition: string | null;
  rewinds: number | null;
}

/**
 * A site at one moment: every set in use and every motor, by id. It is never changed: what comes after a change is another
 * plant, in which whatever did not change is the very same object.
 */
export interface KeptPlant {
  siteId: string;
  name: string;
  timezone: string;
  settings: SiteSettings;
  sets: ReadonlyMap<string, KeptSet>;
  motors: ReadonlyMap<string, KeptMotor>;
}
