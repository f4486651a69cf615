import { type Actor, must } from '@/lib/auth/may';
import { matrixOf } from '@/lib/spares/cover/matrix';
import { type MatrixPart, matrixPart } from '@/lib/spares/cover/matrix-part';
import { isInState, setStanding } from '@/lib/spares/cover/set-standing';
import { type CoverFilter, isAskedSet } from '../cover-filter';
import { coverOfSite } from '../kept-plant/cover-now';

export interface CoverMatrix extends MatrixPart {
  /** How many sets are asked for, and how many shelf motors may be offered. */
  sets: number;
  motors: number;
}

/** The sets asked for against the motors on the shelves, by clusters; the order asked for is that of lists alone. */
export async function coverMatrix(
  actor: Actor,
  filter: CoverFilter,
  most: { rows: number; columns: number },
): Promise<CoverMatrix> {
  must(actor, 'register.read');
  const { plant, cover } = await coverOfSite(actor.siteId);
  const asked = [...plant.sets.values()].flatMap((of) => {
    const row = cover.sets.get(of.setId);
    if (row === undefined) throw new Error(`the cover lacks ${of.tag}`);
    const isAsked = filter.state === null || isInState(setStanding(cover, row), filter.state);
    return isAsked && isAskedSet(of, filter) ? [row] : [];
  });
  return {
    ...matrixPart(matrixOf(cover, asked), most),
    sets: asked.length,
    motors: [...cover.kinds.values()].reduce((sum, { length }) => sum + length, 0),
  };
}
