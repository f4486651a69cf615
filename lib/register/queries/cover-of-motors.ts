import { type Actor, must } from '@/lib/auth/may';
import { type MotorStanding, motorStandings, type Protected } from '@/lib/spares/cover/motor-standing';
import type { CoverMotorFilter } from '../cover-filter';
import { coverOfSite } from '../kept-plant/cover-now';
import type { KeptMotor, KeptSet } from '../kept-plant/kept-plant';

/** A shelf motor with what it is worth to the plant. */
export interface MotorLine extends MotorStanding {
  of: KeptMotor;
}

export interface CoverOfMotors {
  lines: MotorLine[];
  all: number;
  idle: number;
  needed: number;
  /** Of the motor asked about: what would be left for its sets if it were used tonight; null: it is on no shelf. */
  used: { line: MotorLine; sets: { of: KeptSet; fit: Protected['fit']; left: number }[] } | null;
}

/** Every motor on a shelf: the sets it protects, and what its use would leave. Those needed most first. */
export async function coverOfMotors(
  actor: Actor,
  { q, state }: CoverMotorFilter,
  used: string | null,
  { page, perPage }: { page: number; perPage: number },
): Promise<CoverOfMotors> {
  must(actor, 'register.read');
  const { plant, cover } = await coverOfSite(actor.siteId);
  const byNumber = new Map([...plant.motors.values()].map((of) => [of.motor.id, of]));
  const every = motorStandings(cover).flatMap((standing): MotorLine[] => {
    const of = byNumber.get(standing.motor.id);
    return of === undefined ? [] : [{ ...standing, of }];
  });
  const isIdle = ({ sets }: MotorLine) => sets.length === 0;
  const isNeeded = ({ leavesNone }: MotorLine) => leavesNone > 0;
  const asked = every
    .filter((line) => (state === null || (state === 'idle' ? isIdle(line) : isNeeded(line))) && isNamed(line, q))
    .sort((a, b) => b.leavesNone - a.leavesNone || b.leavesOne - a.leavesOne || b.sets.length - a.sets.length);
  const line = every.find(({ motor }) => motor.id === used) ?? null;
  return {
    lines: asked.slice((page - 1) * perPage, page * perPage),
    all: asked.length,
    idle: every.filter(isIdle).length,
    needed: every.filter(isNeeded).length,
    used: line === null ? null : { line, sets: left(line, plant.sets) },
  };
}

function left({ sets }: MotorLine, known: ReadonlyMap<string, KeptSet>) {
  return sets
    .flatMap(({ of, fit, left }) => {
      const set = known.get(of.setId);
      return set === undefined ? [] : [{ of: set, fit, left }];
    })
    .sort(
      (a, b) => a.left - b.left || (a.of.criticality ?? 5) - (b.of.criticality ?? 5) || (a.of.tag < b.of.tag ? -1 : 1),
    );
}

function isNamed({ of: { motor, store, shelf, maker } }: MotorLine, q: string | null): boolean {
  if (q === null) return true;
  const text = [motor.id, motor.frame, store, shelf, maker].join(' ').toLowerCase();
  return q
    .toLowerCase()
    .split(/\s+/)
    .every((word) => text.includes(word));
}
