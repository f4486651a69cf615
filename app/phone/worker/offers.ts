import { offerLine } from '@/app/sets/[tag]/candidates/offer-line';
import { SHOWN, SOURCES } from '@/app/sets/[tag]/candidates/sources';
import type { Source } from '@/lib/matching/offer/candidate';
import { type Fitting, fittingOf } from '@/lib/matching/offer/ranked';
import { type Sieve, sieveOf } from '@/lib/matching/offer/sieve';
import type { PackSet } from '@/lib/offline/pack';
import { candidatesInHand, type PlantInHand, setInHand, setTagged } from '@/lib/offline/plant-in-hand';
import type { RankedHere } from '../asked';
import { todayAt } from '../today-at';
import { held } from './held';

interface Offer {
  set: PackSet;
  failed: string | null;
  fitting: Fitting;
}

/** The sieve is of one plant, and the last list of one day. */
let sieved: { plant: PlantInHand; settings: string; sieve: Sieve } | null = null;
let last: { plant: PlantInHand; sieve: Sieve; tag: string; day: string; offer: Offer } | null = null;

/** The list of a set; null: it is not on this phone. `whole`: the source that is told to its end. */
export function listOf(tag: string, whole: Source | null): RankedHere | null {
  const offer = offerFor(tag);
  if (offer === null) return null;
  const { set, failed, fitting } = offer;
  const { fits, asked } = fitting;
  // The misses take as long as the list: they are judged where a source has nothing, or somebody looks.
  const isLacking = SOURCES.some((source) => fits[source].length === 0 && asked[source] > 0);
  const missed = isLacking ? fitting.misses() : [];
  const told = (source: Source) => {
    const nearest = missed.find(({ candidate }) => candidate.from === source);
    return {
      lines: fits[source].slice(0, whole === source ? undefined : SHOWN).map(offerLine),
      count: fits[source].length,
      asked: asked[source],
      nearest: nearest === undefined ? null : offerLine(nearest),
    };
  };
  return {
    ...{ tag: set.tag, service: set.service, area: set.area, isCriticalityTold: set.criticality !== null, failed },
    sources: { shelf: told('shelf'), set: told('set'), buy: told('buy') },
    unsuitableCount: fitting.unsuitableCount,
  };
}

/** The nearest misses. */
export const missesFor = (tag: string) => offerFor(tag)?.fitting.misses().map(offerLine) ?? null;

/** Gets ready for the next list: of this set, where one is named. */
export function makeReady(tag: string | null) {
  if (held.about === null) return;
  if (tag === null) sieveNow();
  else offerFor(tag);
}

function offerFor(tag: string): Offer | null {
  const { plant, about } = held;
  const set = setTagged(plant, tag);
  if (set === null || about === null) return null;
  const day = todayAt(about);
  const sieve = sieveNow();
  if (last?.plant === plant && last.sieve === sieve && last.tag === set.tag && last.day === day) return last.offer;
  const pumpSet = setInHand(plant, set);
  const fitting = fittingOf(pumpSet, candidatesInHand(plant, set), about.site.settings, day, sieve);
  const offer = { set, failed: pumpSet.failed?.id ?? null, fitting };
  last = { plant, tag: set.tag, day, sieve, offer };
  return offer;
}

function sieveNow(): Sieve {
  const { plant, about } = held;
  if (about === null) throw new Error('Nothing is on this phone to be sieved');
  const settings = JSON.stringify(about.site.settings);
  if (sieved === null || sieved.plant !== plant || sieved.settings !== settings) {
    const motors = [...plant.motors.values()].map(({ motor }) => motor);
    sieved = { plant, settings, sieve: sieveOf(motors, about.site.settings) };
  }
  return sieved.sieve;
}
