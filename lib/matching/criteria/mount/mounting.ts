import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import type { Context } from '../../context';
import { block, type Compared, type Finding, ok, toRead } from '../../finding';
import { joined } from '../../joined';
import { position } from '../../mount/position';
import { unusedFace, unusedFeet } from '../../mount/unused';

/** Is it held and turned the way the place needs? By its feet, its face or both, and by the way its shaft points. */
export function mounting(set: PumpSet, candidate: Motor, context: Context): Finding | null {
  const { seat, fit } = context;
  const { feet, face } = fit.holding;
  const compared: Compared = { criterion: 'mounting', have: heldBy(feet, face), need: set.mounting, cite: CITE };
  if (seat.needsFeet && feet === false) return block(compared, 'It has no feet, and this place needs them.');
  if (seat.needsFace && face === false) return block(compared, 'It has no face, and this place needs one.');
  if (seat.needsFeet && feet === null)
    return toRead(
      compared,
      'Whether it has feet is unknown.',
      'Look on this motor for feet, or read the mounting on its plate',
      2,
    );
  if (seat.needsFace && face === null)
    return toRead(
      compared,
      'Whether it has a face is unknown.',
      'Look on this motor for a face, or read the mounting on its plate',
      2,
    );

  const unused = joined(
    seat.needsFace ? null : unusedFace(context, compared),
    seat.needsFeet ? null : unusedFeet(context, compared),
  );
  const found = joined(position(set, candidate, context, compared), unused);
  return found ?? ok(compared, `Held by ${HELD[set.mounting]}, as this place needs.`);
}

const CITE = 'IEC 60034-7 mounting codes (read in two texts); NEMA MG 1-2016 4.2.2 suffixes';
const HELD = { foot: 'its feet', face: 'its face', 'foot-and-face': 'its feet and its face' } as const;

function heldBy(feet: boolean | null, face: boolean | null): PumpSet['mounting'] | null {
  if (feet === null || face === null) return null;
  if (feet) return face ? 'foot-and-face' : 'foot';
  return face ? 'face' : null;
}
