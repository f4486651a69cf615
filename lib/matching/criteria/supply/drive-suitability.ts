import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { figure } from '@/lib/units/figure';
import type { Context } from '../../context';
import { isSamePlate } from '../../context/same-plate';
import { type Compared, type Finding, needsWork, ok } from '../../finding';
import { joined } from '../../joined';
import { insulationOnDrive } from '../../on-drive/insulation-on-drive';
import { speedsOnDrive } from '../../on-drive/speeds-on-drive';

/** Is the motor fit for this drive: its insulation, its speed range, its settings? Not asked on the mains. */
export function driveSuitability(set: PumpSet, candidate: Motor, context: Context): Finding | null {
  const { drive, start } = set.supply;
  if (start !== 'drive' || drive === null) return null;

  const have = candidate.driveDuty;
  const compared: Compared = {
    criterion: 'drive-suitability',
    have,
    need: 'drive-fed',
    cite: 'common practice, no source',
  };
  const isSame = isSamePlate(set, candidate, context.row);
  const found = joined(
    insulationOnDrive(set, candidate, context, isSame, compared),
    speedsOnDrive(set, drive, candidate, context, isSame, compared),
  );
  return withSettings(found ?? ok(compared, 'Suits the drive.'), context, compared);
}

/** The drive must be told the new plate; one that shows the same figures has still to be identified. */
function withSettings(found: Finding, { row, settings }: Context, compared: Compared): Finding {
  const { plate } = row;
  const figures =
    plate === null || plate.kw === null || plate.amps === null
      ? ''
      : ` (${figure(plate.kw)} kW, ${figure(plate.amps)} A)`;
  const work = {
    id: 'drive-settings',
    what: `Enter the new plate${figures} in the drive and let it identify the motor`,
    hours: settings.hours['drive-settings'],
  } as const;
  if (found.grade === 'ok' || found.grade === 'note')
    return needsWork({ ...compared, cite: found.cite }, `${found.says} Enter the new plate in the drive.`, work);
  return { ...found, work: found.work ?? work };
}
