import { type Actor, must } from '@/lib/auth/may';
import type { HoldAsked } from '../hold-asked';
import { plantNow } from '../kept-plant/plant-now';
import { type SetsTakingPart, setsTakingPart } from '../sets-taking-part';

/** The sets for which motors to hold are asked, with which of them take part. Nothing is judged. */
export async function setsToHold(actor: Actor, asked: Pick<HoldAsked, 'sets' | 'ticks'>): Promise<SetsTakingPart> {
  must(actor, 'register.read');
  return setsTakingPart(await plantNow(actor), asked);
}
