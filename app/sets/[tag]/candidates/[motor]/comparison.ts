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
      together: !seat.needsFeet ? 'faces' : isSetByShaft(findings) ? 'shaft-ends' : 'holes',
      shimsPresentMm: base.shimsPresentMm,
      hub: isHub ? { lengthMm: coupling.hub.lengthMm, boreMm: seat.shaftDiameter.value } : null,
      boltMm: seat.bolt.value,
      work: findings.flatMap(({ work }) => (work === null ? [] : [work.id])),
      act: actOf(findings),
      unit: 'mm',
    },
  };
}

/** Where the base is made or drilled anew, the motor is set so that the shaft ends where the old one did. */
function isSetByShaft(findings: readonly Finding[]): boolean {
  const id = findings.find(({ criterion }) => criterion === 'shaft-position')?.work?.id;
  return id === 'transition-base' || id === 'move-base';
}

/** What does not meet, whether work cures it or not. */
function actOf(findings: readonly Finding[]): MountFacts['act'] {
  const isOff = (of: CriterionId) =>
    findings.some(({ criterion, grade }) => criterion === of && (grade === 'work' || grade === 'block'));
  return (['foot-holes', 'face'] as const).filter(isOff);
}
