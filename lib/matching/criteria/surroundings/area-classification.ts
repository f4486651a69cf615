import type { Classification } from '@/lib/plant/classification';
import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { type AreaAxis, areaInWords, areaShortfall } from '@/lib/standards/area-order';
import { enclosureMinimum, saysExplosionProof } from '@/lib/standards/enclosure-minimum';
import { ipCovers } from '@/lib/standards/ip-covers';
import type { Context } from '../../context';
import { block, type Compared, type Finding, ok, toJudge } from '../../finding';

/**
 * May the motor stand in this hazardous area? These rules only screen out: where the class is stated the best answer is
 * a competent person's check. Where nobody has said, or a person called the place unclassified, the failed motor's mark
 * is evidence. Not asked where neither the set nor the failed motor tells of a class.
 */
export function areaClassification(set: PumpSet, candidate: Motor, context: Context): Finding | null {
  const stated = set.surroundings.classification;
  if (stated === null || stated === undefined) return likeForLike(set, candidate, context);

  const mark = candidate.classification;
  const compared = comparing(mark, stated);
  if (mark === null) return unmarked(set, candidate, stated, context, compared);
  const voided = voids(set, candidate, context);
  if (voided !== null) return block(compared, voided);

  const short = areaShortfall(mark, stated);
  if (short === null)
    return toJudge(compared, `The mark covers the place: a competent person confirms it by the certificate.`);
  if (short.kind === 'lower') return block(compared, `${LOWER[short.axis]} the place needs.`);
  return toJudge(
    compared,
    `${UNSTATED[short.axis]} is not stated for both motor and place: a competent person settles it.`,
  );
}

const CITE = 'NEC 500.8, 501.125, 502.125; IEC 60079-14 (from memory); orders: IEC 60079-0';
const LOWER: Record<AreaAxis, string> = {
  scheme: 'The mark is of another scheme than',
  place: 'The mark is not for the kind of place',
  group: 'The mark does not cover the group',
  temperature: 'The surface may get hotter than',
};
const UNSTATED: Record<AreaAxis, string> = {
  scheme: 'The scheme',
  place: 'The zone or division',
  group: 'The group',
  temperature: 'The surface temperature',
};

const comparing = (mark: Classification | null, need: Classification) =>
  ({
    criterion: 'area-classification',
    have: mark === null ? null : areaInWords(mark),
    need: areaInWords(need),
    cite: CITE,
  }) as const;

/** A certificate holds for the plated supply, and on a drive only where the motor is declared for one. */
function voids(set: PumpSet, candidate: Motor, { row }: Context): string | null {
  if (row.kind === 're-rated') return 'Run away from its plated frequency, the motor is outside its area certificate.';
  if (set.supply.start === 'drive' && candidate.driveDuty === 'none')
    return 'Not declared for a drive: on one it is outside its area certificate.';
  return null;
}

function unmarked(set: PumpSet, candidate: Motor, need: Classification, { row }: Context, compared: Compared): Finding {
  if (candidate.enclosure !== null && saysExplosionProof(candidate.enclosure))
    return toJudge(
      compared,
      `${candidate.enclosure} has an area mark that is not recorded: read class, division, group and temperature code.`,
    );
  if (need.scheme !== 'NEC' || need.division !== 2) return block(compared, 'No area mark is known on this motor.');
  if ((candidate.kind !== 'cage' && candidate.kind !== null) || hasContacts(candidate))
    return block(compared, 'Unmarked, and not a plain non-sparking cage motor: not for Division 2.');
  // NEC 502.125(B) and 503.125: dust and fibres ask for a totally enclosed motor.
  if (need.class !== 1 && isOpen(candidate)) return block(compared, 'Unmarked and open: dust and fibres get in.');
  const build = candidate.kind === null ? 'motor, if it is a non-sparking cage motor,' : 'non-sparking cage motor';
  const fed =
    set.supply.start === 'drive' ? ', hotter on a drive' : row.kind === 're-rated' ? ', at another frequency' : '';
  return toJudge(
    compared,
    `Unmarked ${build} in Division 2: a competent person judges its surface temperature${fed}, and its heaters.`,
  );
}

/** Brakes and thermostats switch inside the motor. */
const hasContacts = ({ has }: Motor) => has !== null && (has.includes('brake') || has.includes('thermostat'));

function isOpen({ ip, enclosure }: Motor): boolean {
  if (enclosure !== null && enclosureMinimum(enclosure)?.closed === false) return true;
  return ip !== null && ipCovers(ip, 'IP4X').solids === 'less';
}

function likeForLike(set: PumpSet, candidate: Motor, context: Context): Finding | null {
  const had = set.failed?.classification ?? null;
  if (had === null) return null;
  const mark = candidate.classification;
  const compared = comparing(mark, had);
  if (mark === null) {
    const said = set.surroundings.classification === null ? 'The place is called unclassified, yet the' : 'The';
    return toJudge(
      compared,
      `${said} failed motor had an area mark and this one has none: find out what the place is.`,
    );
  }
  const voided = voids(set, candidate, context);
  if (voided !== null) return toJudge(compared, voided);
  const short = areaShortfall(mark, had);
  if (short === null) return ok(compared, 'Covers the failed motor’s area mark.');
  if (short.kind === 'lower')
    return toJudge(compared, `${LOWER[short.axis]} the failed motor’s mark gave: find out what the place is.`);
  return toJudge(compared, `${UNSTATED[short.axis]} is not stated on both marks: find out what the place is.`);
}
