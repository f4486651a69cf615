import { mountOfMotor } from '@/lib/drawing/mount';
import type { Units } from '@/lib/fields/field';
import { MOTOR_FIELDS } from '@/lib/fields/motor-fields';
import { readForm, type Typed } from '@/lib/fields/read-form';
import { edited, objectOf } from '@/lib/fields/state';
import { type MotorInput, motor as schema } from '@/lib/plant/motor';
import { read } from '@/lib/plant/reading';
import { motorDimensions } from '@/lib/standards/motor-dimensions';
import { DimensionTable, FaceFacts } from '../dimension-table';
import { MountDrawing } from '../look/mount-drawing';
import { SectionHead } from '../look/section-head';
import { factsAlone } from '../motor-drawing';
import { PlateFacts } from '../plate-facts';

/** What the plate says as it is read so far, with the standard's dimensions of its frame; and what is not understood. */
export function MotorReading({ typed, units }: { typed: Typed; units: Units }) {
  const { edit, problems } = readForm(MOTOR_FIELDS, {}, typed, units, { hasRatings: true });
  const {
    maker: _m,
    serial: _s,
    condition: _c,
    rewinds: _r,
    note: _n,
    unread: _u,
    ...plate
  } = objectOf(edited({}, edit));
  const told = read(schema, { ...plate, id: plate.id ?? 'not numbered yet' } as MotorInput);
  const wrong = told.ok
    ? problems
    : [
        ...problems,
        ...told.problems.map(({ path, value, says }) => ({ path, says: `${path}: ${value ?? ''} ${says}.` })),
      ];
  const motor = told.ok ? told.value : null;
  const fit = motor === null || motor.frame === null ? null : motorDimensions(motor);
  const mount = motor === null || fit === null ? null : mountOfMotor(motor.id, fit, motor.terminalBox);
  return (
    <>
      <SectionHead title="As it is read" aside="nothing is saved yet" />
      {wrong.length > 0 && (
        <ul className="pt-3">
          {wrong.map(({ path, says }) => (
            <li key={`${path} ${says}`}>{says}</li>
          ))}
        </ul>
      )}
      {motor === null ? <p className="pt-3">It is shown once these are right.</p> : <PlateFacts motor={motor} />}
      {mount !== null && <MountDrawing incoming={mount} outgoing={null} facts={factsAlone(mount)} />}
      {fit !== null && (
        <>
          <SectionHead title="Dimensions of the frame" />
          <DimensionTable dimensions={fit.dimensions} />
          {fit.face !== null && <FaceFacts face={fit.face} />}
        </>
      )}
    </>
  );
}
