import type { MountDrawingProps } from '@/app/look/mount-drawing';
import { mountOfMotor, mountOfSeat } from '@/lib/drawing/mount';
import type { MountFacts } from '@/lib/drawing/mount-facts';
import { seatOf } from '@/lib/matching/context/seat';
import type { CriterionId, Finding } from '@/lib/matching/finding';
import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { motorDimensions } from '@/lib/standards/motor-dimensions';

/** What the drawing shows: the candidate over what the set offers, and where the findings say to act. */
export function comparison(set: PumpSet, motor: Motor, findings: readonly Finding[]): MountDrawingProps {
  const seat = seatOf(set);
  const { failed, coupling, base } = set;
  const isHub = seat.input === 'hub';
  return {
    incoming: mountOfMotor(motor.id, motorDimensions(motor), motor.terminalBox),
    outgoing: mountOfSeat(
      failed === null ? `seat of ${set.tag}` : failed.id,
      seat,
      failed === null ? null : motorDimensions(failed),
    ),
    facts: {
      together: seat.needsFeet ? 'holes' : 'faces',
      shimsPresentMm: base.shimsPresentMm,
      hub: isHub ? { lengthMm: coupling.hub.lengthMm, boreMm: seat.shaftDiameter.value } : null,
      boltMm: seat.bolt.value,
      act: actOf(findings),
      unit: 'mm',
    },
  };
}

function actOf(findings: readonly Finding[]): MountFacts['act'] {
  const toAct = (criterion: CriterionId) =>
    findings.find((finding) => finding.criterion === criterion && finding.grade !== 'ok' && finding.grade !== 'note');
  const shaft = toAct('shaft-diameter');
  const act: MountFacts['act'][number][] = [];
  if (shaft?.work?.id === 'bushing') act.push('bushing');
  if (toAct('foot-holes') !== undefined) act.push('foot-holes');
  if (toAct('face') !== undefined) act.push('face');
  return act;
}
