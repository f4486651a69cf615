import { MountDrawing } from '@/app/look/mount-drawing';
import { SectionHead } from '@/app/look/section-head';
import { Tag } from '@/app/look/tag';
import { factsAlone } from '@/app/motor-drawing';
import { motorPath } from '@/app/paths';
import { PlateFacts, PlateFigures } from '@/app/plate-facts';
import type { Mount } from '@/lib/drawing/mount';
import type { PackMotor } from '@/lib/offline/pack';
import type { Rating } from '@/lib/plant/rating';

/** The motor now in the set: its plate in short, to scale, and in full. */
export function MotorOnPhone({
  motor,
  mount,
  atSupply,
}: {
  motor: PackMotor | null;
  mount: Mount | null;
  atSupply: Rating | null;
}) {
  if (motor === null || mount === null)
    return (
      <section>
        <SectionHead title="Motor in the set" aside="none" />
        <p className="pt-3">
          No motor is on record here. What can go in is judged by what is measured at the set; whatever nobody measured
          comes out as a check.
        </p>
      </section>
    );
  return (
    <section>
      <SectionHead
        title="Motor in the set"
        aside={
          <a className="to" href={motorPath(motor.number)}>
            <Tag>{motor.number}</Tag>
          </a>
        }
      />
      <PlateFigures motor={motor.motor} {...(atSupply !== null && { row: atSupply })} />
      <MotorAlone motor={motor} mount={mount} />
    </section>
  );
}

/** A motor to scale and its whole plate. */
export function MotorAlone({ motor: { motor, maker, serial }, mount }: { motor: PackMotor; mount: Mount }) {
  return (
    <>
      <MountDrawing isBare only="side" incoming={mount} outgoing={null} facts={factsAlone(mount)} />
      <details>
        <summary className="more">
          <span className="nowrap">The whole plate</span>
          <span className="label">
            <bdi>{[maker, serial].filter(Boolean).join(', ')}</bdi>
          </span>
        </summary>
        <PlateFacts motor={motor} />
      </details>
    </>
  );
}
