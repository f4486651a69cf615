import type { Compared } from '@/lib/matching/finding';
import { joined } from '@/lib/matching/joined';
import { insulationOnDrive } from '@/lib/matching/on-drive/insulation-on-drive';
import { speedsOnDrive } from '@/lib/matching/on-drive/speeds-on-drive';
import { type ReviewFinding, raised } from '../finding';
import type { ReviewCase } from '../review-case';
import { urgencyOf } from '../urgency-of';

/**
 * Is the motor made for the drive that feeds it: its winding for the drive's peaks, its cooling for the lowest speed, its
 * rotor for the highest? That it has stood there so far is no answer. Not asked on the mains.
 */
export function driveDuty({ set, motor, context }: ReviewCase): ReviewFinding | null {
  const { drive, start } = set.supply;
  if (start !== 'drive' || drive === null) return null;
  const compared: Compared = {
    criterion: 'drive-suitability',
    have: motor.driveDuty,
    need: 'drive-fed',
    cite: 'common practice, no source',
  };
  const found = joined(
    insulationOnDrive(set, motor, context, false, compared),
    speedsOnDrive(set, drive, motor, context, false, compared),
  );
  const urgency = found === null ? null : urgencyOf(found);
  if (found === null || urgency === null) return null;
  const { have, need, unit, says, cite, reading } = found;
  return raised({
    ...{ rule: 'drive-duty', urgency, have, need, unit, says, cite, reading },
    figures: {
      ...{
        driveDuty: motor.driveDuty,
        range: motor.constantTorqueRange,
        maxRpm: motor.maxRpm,
        volts: context.row.volts,
      },
      ...{ minHertz: drive.minHertz, maxHertz: drive.maxHertz, baseHertz: context.row.hertz, cableM: drive.cableM },
      filter: drive.filter === null ? null : String(drive.filter),
    },
  });
}
