import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { figure } from '@/lib/units/figure';
import type { Context } from '../../context';
import { projectionOf } from '../../context/seat';
import { block, type Compared, type Finding, needsWork, note, ok, toJudge, toRead } from '../../finding';
import { joined } from '../../joined';
import { citeOfBoth } from '../../mount/cite-of-both';
import { hubWork } from '../../mount/hub-work';
import { CARRIED_SHARE } from '../../mount/shaft-shift';

/**
 * Does the shaft carry the hub, go into the quill, and stand out from the face as far as the old one? In mm, from the
 * shoulder to the shaft end, or from the face. Not asked of a coupled foot motor where the set states no hub length.
 */
export function shaftLength(set: PumpSet, candidate: Motor, context: Context): Finding | null {
  const { seat } = context;
  const { type, hub } = set.coupling;
  if (type !== 'belt' && !seat.needsFace && seat.input === 'hub' && hub.lengthMm === null) return null;

  const byFace = seat.needsFace || seat.input !== 'hub' ? ofProjection(set, candidate, context) : null;
  const byHub = seat.input === 'hub' && hub.lengthMm !== null ? ofHub(hub.lengthMm, context) : null;
  const found = joined(byFace, byHub);
  // Where both pass, the two lengths stand and not the words.
  return type === 'belt' ? joined(found, ofBelt(context)) : found;
}

const COMMON = 'common practice, no source';
const BELT_CITE = 'NEMA MG 1-2016 4.2.2, S: short shaft, for direct drive (read in two texts)';
const READING = 'Measure this motor’s shaft from its shoulder to the end';
const READ_GAP = 'Measure the coupling gap at the set, and read the least gap in the coupling maker’s sheet';
const DUST = 1e-9;

function ofBelt({ seat, fit }: Context): Finding {
  const compared: Compared = {
    criterion: 'shaft-length',
    have: fit.shaft === 'short' ? 'short shaft' : fit.dimensions.shaftLengthMm.value,
    need: 'long shaft',
    cite: BELT_CITE,
  };
  if (fit.shaft !== 'short') {
    if (fit.dimensions.shaftLengthMm.value !== null) return ok(compared, 'Not a short shaft: it may carry a sheave.');
    return toRead(compared, 'Shaft length unknown; a short shaft must not carry a belt.', READING, 2);
  }
  const says = 'A short shaft is made for direct drive, not for a belt';
  return block(compared, seat.shaft === 'short' ? `${says}; the failed motor had one too.` : `${says}.`);
}

function ofHub(need: number, { fit, hub, settings, seat }: Context): Finding {
  const { shaftLengthMm, shaftDiameterMm } = fit.dimensions;
  const have = shaftLengthMm.value;
  const cite = shaftLengthMm.cite ?? COMMON;
  const compared: Compared = { criterion: 'shaft-length', have, need, unit: 'mm', cite };
  if (have === null) return toRead(compared, 'Shaft length unknown.', READING, 2);
  if (have >= need - DUST) return ok(compared, 'The shaft carries the whole hub.');
  const says = `Shaft is ${figure(need - have)} mm shorter than the hub`;
  if (have >= need * CARRIED_SHARE - DUST)
    return note({ ...compared, cite: CARRIED }, `${says}: ${share(have / need)} of the hub is carried.`);
  const bore = shaftDiameterMm.value;
  const was = seat.shaftDiameter.value;
  if ((hub.kind === 'new-hub' || hub.kind === 'new-sheave') && bore !== null && was !== null) {
    const work = hubWork(hub.kind, bore, was, settings.hours);
    return needsWork(compared, `${says}: order the new hub no longer than the shaft, ${figure(have)} mm.`, {
      ...work,
      what: `${work.what}; the hub no longer than ${figure(have)} mm`,
    });
  }
  return block(compared, `${says}: only ${share(have / need)} of it would be carried, and ${LEAST_CARRIED} has to be.`);
}

/** Rounded down, so that just too little never reads as enough. */
const share = (carried: number) => `${figure(Math.floor(100 * carried + DUST), 0)} %`;
const LEAST_CARRIED = share(CARRIED_SHARE);
const KEY_CARRIES = 'Does the key left in it carry the torque?';
const CARRIED = '0.8 of the hub on the shaft: common practice, no source';
/**
 * Projections this near are the same: AH of a pump shaft is printed 0.031 in either way (NEMA MG 1-2016 Table 18-33), and
 * 3-1/8 in stands for 80 mm.
 */
const SAME_MM = 0.8;

/** Shaft and face are each printed to 0.01 in, half of it either way: a shaft is not longer by less than both. */
const DEPTH_MM = 0.26;

/** Quill, pump shaft, or a hub behind a face: what counts is how far the shaft stands out from the face. */
function ofProjection({ coupling }: PumpSet, _: Motor, { seat, fit }: Context): Finding {
  const { shaftLengthMm } = fit.dimensions;
  const have = seat.needsFace ? projectionOf(fit) : shaftLengthMm.value;
  const old = seat.needsFace ? seat.projectionMm : seat.shaftLength.value;
  const depth = seat.input === 'quill' ? coupling.quill.depthMm : null;
  const cite = citeOfBoth(shaftLengthMm, seat.shaftLength, COMMON);
  const compared: Compared = { criterion: 'shaft-length', have, need: depth ?? old, unit: 'mm', cite };
  if (have === null && old === null && fit.shaft === 'J' && fit.frame === seat.frame)
    return note(compared, 'The threaded shaft of the same frame: hold its length against the old one.');
  if (have === null)
    return toRead(
      compared,
      'How far its shaft stands out from the face is unknown.',
      'Measure on this motor from the face to the shaft end',
      2,
    );
  if (depth !== null) {
    if (have > depth + DEPTH_MM)
      return block(compared, `Shaft is ${figure(have - depth)} mm longer than the quill is deep.`);
    return old !== null && have < old * CARRIED_SHARE - DUST
      ? toJudge(compared, `It goes ${figure(old - have)} mm less deep into the quill than the old one. ${KEY_CARRIES}`)
      : ok(compared, 'It goes into the quill with room to spare.');
  }
  if (old === null)
    return toRead(
      compared,
      'How far the shaft should stand out from the face is unknown.',
      seat.input === 'quill' ? 'Measure at the gear how deep the quill is' : 'Measure the old shaft from face to end',
      10,
    );
  if (Math.abs(have - old) <= SAME_MM) return ok(compared, 'The shaft stands out from the face as the old one did.');
  return unlike(coupling, have - old, old, seat.input, compared);
}

function unlike(
  { hub, gapMm, gapMinMm }: PumpSet['coupling'],
  longerMm: number,
  old: number,
  input: Context['seat']['input'],
  compared: Compared,
): Finding {
  const mm = figure(Math.abs(longerMm));
  const is = `Shaft stands out ${mm} mm ${longerMm > 0 ? 'further' : 'less far'} from the face than the old one`;
  if (input === 'pump-shaft') return block(compared, `${is}: the pump takes its own length only.`);
  if (input === 'quill')
    return longerMm > 0
      ? toRead(compared, `${is}; the depth of the quill is unknown.`, 'Measure at the gear how deep the quill is', 10)
      : old + longerMm >= old * CARRIED_SHARE - DUST
        ? note(compared, `${is}: it goes that much less deep into the quill.`)
        : toJudge(compared, `${is}. ${KEY_CARRIES}`);
  if (longerMm < 0) {
    if (hub.lengthMm === null)
      return toRead(
        compared,
        `${is}; the length of the hub is unknown.`,
        'Measure at the set the hub along its bore',
        5,
      );
    return -longerMm <= hub.lengthMm * (1 - CARRIED_SHARE) + DUST
      ? note({ ...compared, cite: CARRIED }, `${is}: the hub overhangs it by that.`)
      : block(
          compared,
          `${is}: only ${share(Math.max(0, 1 + longerMm / hub.lengthMm))} of the hub would be carried, and ${LEAST_CARRIED} has to be.`,
        );
  }
  if (gapMm === null || gapMinMm === null)
    return toRead(compared, `${is}; what the coupling gap can take is unknown.`, READ_GAP, 10);
  return gapMm - longerMm >= gapMinMm - DUST
    ? note(compared, `${is}: the coupling gap takes it. Set the gap anew.`)
    : block(compared, `${is}: the coupling gap can take only ${figure(Math.max(0, gapMm - gapMinMm))} mm.`);
}
