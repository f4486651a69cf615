import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { figure } from '@/lib/units/figure';
import type { Context } from '../../context';
import { isPumpShaft } from '../../context/hub-change';
import { block, type Compared, type Finding, needsWork, note, ok, toRead } from '../../finding';
import { citeOfBoth } from '../../mount/cite-of-both';
import { hubWork } from '../../mount/hub-work';

/**
 * Does the shaft fit the hub, quill or pump? Against the bore where told, else the failed motor's shaft; in mm, nominal
 * against nominal, with the fit class. Always asked.
 */
export function shaftDiameter(set: PumpSet, candidate: Motor, context: Context): Finding | null {
  const { seat, fit, hub } = context;
  const { shaftDiameterMm } = fit.dimensions;
  const have = shaftDiameterMm.value;
  const need = seat.shaftDiameter.value;
  const compared: Compared = {
    criterion: 'shaft-diameter',
    have,
    need,
    unit: 'mm',
    cite: citeOfBoth(shaftDiameterMm, seat.shaftDiameter, COMMON),
  };
  if (hub.kind === 'none') return fits(context, compared);
  if (hub.kind === 'unknown') return unknown(candidate, context, compared);
  if (hub.kind === 'impossible') return blocked(set, context, compared);
  if (have === null || need === null) return unknown(candidate, context, compared);
  const says = `Shaft is ${figure(Math.abs(have - need), 3)} mm ${have < need ? 'thinner' : 'thicker'} than the bore.`;
  const work = hubWork(hub.kind, have, need, context.settings.hours);
  return needsWork(compared, says, work);
}

const COMMON = 'common practice, no source';

function fits({ seat, fit }: Context, compared: Compared): Finding {
  if (compared.have === null || compared.need === null)
    return note(compared, 'The threaded shaft of the same frame: hold its thread against the old one.');
  if (seat.shaftFit !== null && fit.shaftFit !== null && seat.shaftFit !== fit.shaftFit)
    return note(
      compared,
      `Same nominal diameter; its fit is ${fit.shaftFit} where the hub was bored for ${seat.shaftFit}: measure before pressing on.`,
    );
  return ok(compared, 'The shaft fits as it is.');
}

function unknown(candidate: Motor, { seat, fit }: Context, compared: Compared): Finding {
  if (compared.have === null)
    return toRead(
      compared,
      `Shaft of ${candidate.frame ?? 'this motor'} unknown.`,
      fit.shaft === 'hollow'
        ? 'Measure the bore of this motor’s hollow shaft'
        : 'Measure this motor’s shaft with a caliper',
      2,
    );
  if (compared.need === null)
    return toRead(
      compared,
      'The bore it has to fit is unknown.',
      'Measure at the set the bore of the hub, or the shaft of the old motor, with a caliper',
      10,
    );
  if (seat.input === 'hub' && !isPumpShaft(fit.shaft) && (seat.shaft === null || !isPumpShaft(seat.shaft)))
    return toRead(
      compared,
      'Its key is unknown, and with it what a sleeve would leave.',
      'Measure the width of the keyway in this motor’s shaft',
      2,
    );
  return toRead(
    compared,
    seat.shaft === null
      ? 'Which kind of pump shaft the pump takes is unknown.'
      : 'One of the two shafts is a special one: the same diameter does not make it fit.',
    'Measure the old shaft and this one: diameters, steps, keyway, thread',
    10,
  );
}

function blocked({ coupling }: PumpSet, { seat, fit }: Context, compared: Compared): Finding {
  const { have, need } = compared;
  const isPump =
    seat.input === 'pump-shaft' || isPumpShaft(fit.shaft) || (seat.shaft !== null && isPumpShaft(seat.shaft));
  if (isPump)
    return seat.shaft !== null && seat.shaft !== fit.shaft
      ? block(
          { ...compared, have: SHAFT[fit.shaft], need: SHAFT[seat.shaft], unit: null },
          `It has ${SHAFT[fit.shaft]} in place of ${SHAFT[seat.shaft]}: pump shafts interchange only with their own type and size.`,
        )
      : block(
          compared,
          typeof have === 'number' && typeof need === 'number'
            ? `Shaft is ${figure(have, 3)} mm in place of ${figure(need, 3)} mm: a pump shaft interchanges only with its own size.`
            : 'A pump shaft interchanges only with its own size.',
        );
  if (typeof have !== 'number' || typeof need !== 'number') return block(compared, 'The shaft does not fit.');
  const mm = figure(Math.abs(have - need), 3);
  if (seat.input === 'quill')
    return have > need
      ? block(compared, `Shaft is ${mm} mm thicker than the quill: a quill is not rebored.`)
      : block(
          compared,
          `Shaft is ${mm} mm thinner than the quill, and no reducer bushing is known to fill the difference.`,
        );
  const { reboreToMm } = coupling.hub;
  return have > need
    ? block(
        compared,
        `Shaft is ${mm} mm thicker than the bore${reboreToMm === null ? '' : `, which may go to ${figure(reboreToMm)} mm`}, and the hub may not be replaced.`,
      )
    : block(compared, `Shaft is ${mm} mm thinner than the bore: no bushing, no room for a sleeve, and no other hub.`);
}

const SHAFT = {
  plain: 'a plain shaft',
  short: 'a short shaft',
  JM: 'a JM pump shaft',
  JP: 'a JP pump shaft',
  J: 'a threaded jet-pump shaft',
  hollow: 'a hollow shaft',
  'solid-vertical': 'a solid vertical pump shaft',
  taper: 'a tapered shaft',
  special: 'a special shaft',
} as const;
