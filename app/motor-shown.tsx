import Link from 'next/link';
import type { ReactNode } from 'react';
import type { Mount } from '@/lib/drawing/mount';
import type { Motor } from '@/lib/plant/motor';
import type { Rating } from '@/lib/plant/rating';
import { MountDrawing } from './look/mount-drawing';
import { SectionHead } from './look/section-head';
import { Tag } from './look/tag';
import { factsAlone } from './motor-drawing';
import { motorPath } from './paths';
import { PlateFacts, PlateFigures } from './plate-facts';

interface MotorProps {
  motor: Motor;
  maker: string | null;
  serial: string | null;
  /** The motor to scale. */
  mount: Mount;
}

/** The motor now in a set: its plate in short, to scale, and in full. `atSupply`: the row of its plate at the set's supply. */
export function MotorShown({
  atSupply,
  children,
  ...shown
}: MotorProps & { atSupply: Rating | null; children?: ReactNode }) {
  const { motor } = shown;
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
      <MotorAlone {...shown} />
      {children}
    </section>
  );
}

/** The same where none is on record. */
export function NoMotorShown({ children }: { children?: ReactNode }) {
  return (
    <section>
      <SectionHead title="Motor in the set" aside="none" />
      <p className="pt-3">
        No motor is on record here. What can go in is judged by what is measured at the set; whatever nobody measured
        comes out as a check.
      </p>
      {children}
    </section>
  );
}

/** A motor to scale and its whole plate. */
export function MotorAlone({ motor, maker, serial, mount }: MotorProps) {
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
