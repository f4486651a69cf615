import Link from 'next/link';
import { MountDrawing } from '@/app/look/mount-drawing';
import { SectionHead } from '@/app/look/section-head';
import { Tag } from '@/app/look/tag';
import { factsAlone } from '@/app/motor-drawing';
import { motorPath } from '@/app/paths';
import { PlateFacts, PlateFigures } from '@/app/plate-facts';
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
      <section>
        <SectionHead title="Motor in the set" aside="none" />
        <p className="pt-3">
          No motor is on record here. What can go in is judged by what is measured at the set; whatever nobody measured
          comes out as a check.
        </p>
        <NoPlateLink of={{ set: row.tag }} set={set} />
      </section>
    );
  const atSupply = ratingRowOf(set, motor).plate;
  const mount = mountOfMotor(motor.id, motorDimensions(motor), motor.terminalBox);
  const from = [row.motor?.maker, row.motor?.serial].filter(Boolean).join(', ');
  return (
    <section>
      <SectionHead
        title="Motor in the set"
        aside={
          <Link className="to" href={motorPath(motor.id)}>
            <Tag>{motor.id}</Tag>
          </Link>
        }
      />
      <PlateFigures motor={motor} {...(atSupply !== null && { row: atSupply })} />
      <MountDrawing isBare only="side" incoming={mount} outgoing={null} facts={factsAlone(mount)} />
      <details>
        <summary className="more">
          <span className="nowrap">The whole plate</span>
          <span className="label">
            <bdi>{from}</bdi>
          </span>
        </summary>
        <PlateFacts motor={motor} />
      </details>
      <NoPlateLink of={{ motor: motor.id }} set={set} />
    </section>
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
