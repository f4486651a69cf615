import Link from 'next/link';
import { MotorShown, NoMotorShown } from '@/app/motor-shown';
import { mountOfMotor } from '@/lib/drawing/mount';
import { ratingRowOf } from '@/lib/matching/context/rating-row';
import type { PumpSet } from '@/lib/plant/set';
import type { KnownSet } from '@/lib/register/queries/set-by-tag';
import { motorDimensions } from '@/lib/standards/motor-dimensions';
import { figure } from '@/lib/units/figure';

/** The motor now in the set, its plate in short and in full. */
export function MotorInSet({ row, set }: { row: KnownSet['row']; set: PumpSet }) {
  const motor = set.failed;
  if (motor === null)
    return (
      <NoMotorShown>
        <NoPlateLink of={{ set: row.tag }} set={set} />
      </NoMotorShown>
    );
  return (
    <MotorShown
      motor={motor}
      maker={row.motor?.maker ?? null}
      serial={row.motor?.serial ?? null}
      mount={mountOfMotor(motor.id, motorDimensions(motor), motor.terminalBox)}
      atSupply={ratingRowOf(set, motor).plate}
    >
      <NoPlateLink of={{ motor: motor.id }} set={set} />
    </MotorShown>
  );
}

/** The way to find out what it is, with what the set tells of it. */
function NoPlateLink({ of, set }: { of: { set: string } | { motor: string }; set: PumpSet }) {
  // On a drive the supply's hertz are not what it runs at.
  const hertz = set.supply.start === 'drive' ? null : set.supply.hertz;
  const query = new URLSearchParams({ ...of, ...(hertz !== null && { hertz: figure(hertz, 1) }) });
  return (
    <p className="screen-only">
      <Link className="to" href={`/motors/no-plate?${query}`}>
        {'set' in of ? 'No plate to read? Find out what it is' : 'Its plate is gone or wrong? Find out what it is'}
      </Link>
    </p>
  );
}
