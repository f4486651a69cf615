import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { figure } from '@/lib/units/figure';
import type { Context } from '../../context';
import { isPumpShaft } from '../../context/hub-change';
import { block, type Compared, type Finding, needsWork, ok, toRead } from '../../finding';
import { citeOfBoth } from '../../mount/cite-of-both';
import { isSameLength } from '../../mount/same-length';

/**
 * Is the key of the same section? Widths in mm. Not asked of shafts that carry no key by their kind (threaded, hollow,
 * tapered), nor where the pump takes another kind of shaft.
 */
export function key(set: PumpSet, _: Motor, { seat, fit, hub, settings }: Context): Finding | null {
  if (isKeyless(fit.shaft) || (seat.shaft !== null && isKeyless(seat.shaft))) return null;

  const { keyWidthMm } = fit.dimensions;
  const have = keyWidthMm.value;
  const need = seat.keyWidth.value;
  const cite = citeOfBoth(keyWidthMm, seat.keyWidth, COMMON);
  const compared: Compared = { criterion: 'key', have, need, unit: 'mm', cite };
  const fitted = NEW_KEY[hub.kind];
  if (fitted !== undefined) return ok(compared, fitted);
  // Some small frames have a flat and no key: like for like it fits.
  if (have === null && need === null && set.coupling.hub.keyWidthMm === null && isSameFrame(seat.frame, fit))
    return ok(compared, 'The shaft of the same frame, with a flat in place of a key.');
  if (have === null)
    return toRead(compared, 'Its key is unknown.', 'Measure the width of the keyway in this motor’s shaft', 2);
  if (need === null)
    return toRead(
      compared,
      'The keyway of the hub is unknown.',
      'Measure at the set the width of the keyway in the hub',
      5,
    );
  if (isSameLength(have, need)) return ok(compared, 'Same key.');
  const isPump = seat.input === 'pump-shaft' || isPumpShaft(fit.shaft);
  const says = `Key is ${figure(Math.abs(have - need), 3)} mm ${have < need ? 'narrower' : 'wider'} than the keyway of the ${isPump ? 'pump' : 'hub'}.`;
  if (isPump) return block(compared, says);
  return needsWork(compared, says, {
    id: 'step-key',
    what: `Make a stepped key, ${figure(have, 3)} mm in the shaft and ${figure(need, 3)} mm in the hub`,
    hours: settings.hours['step-key'],
  });
}

const COMMON = 'common practice, no source';

/** What brings its own key. */
const NEW_KEY: Partial<Record<Context['hub']['kind'], string>> = {
  bushing: 'A new key with the new bushing.',
  sleeve: 'A new key with the sleeve.',
  rebore: 'A new key with the rebored hub.',
  'new-hub': 'A new key with the new hub.',
  'new-sheave': 'A new key with the new sheave.',
  'quill-bushing': 'A new key with the reducer bushing.',
};

const isKeyless = (shaft: Context['fit']['shaft']) => shaft === 'J' || shaft === 'hollow' || shaft === 'taper';

const isSameFrame = (frame: string | null, fit: Context['fit']) =>
  frame !== null && frame === fit.frame && fit.system === 'NEMA' && fit.shaft !== 'special';
