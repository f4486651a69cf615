'use client';

import type { Units } from '@/lib/fields/field';
import { MOTOR_GROUPS, MOTOR_HEAD, MOTOR_MEASURED, MOTOR_STATE } from '@/lib/fields/motor-fields';
import { Field, SelectField } from '../look/field';
import { SectionHead } from '../look/section-head';
import { RatingInputs } from '../record/rating-inputs';
import { RecordForm } from '../record/record-form';
import type { RecordState } from '../record/record-state';
import { ELSEWHERE, WHERE_INPUTS } from './motor-place-words';
import { MotorReading } from './motor-reading';
import { saveMotor } from './save-motor';

const GROUPS = [{ title: 'The motor', fields: MOTOR_HEAD }, ...MOTOR_GROUPS, MOTOR_MEASURED, MOTOR_STATE];

/** A motor's plate in the plate's own order, what was read of it beside. */
export function MotorForm({
  first,
  units,
  recordId,
  shelves,
}: {
  first: RecordState;
  units: Units;
  recordId: string | null;
  shelves: readonly { value: string; words: string }[];
}) {
  return (
    <RecordForm
      save={saveMotor}
      first={first}
      units={units}
      groups={GROUPS}
      more={WHERE_INPUTS}
      afterFirst={(typed, errorOf) => (
        <>
          <SectionHead title="Where it is" />
          <div className="two">
            <SelectField
              label="Place"
              name="where"
              empty="choose"
              options={[...shelves, ...ELSEWHERE]}
              defaultValue={typed.where ?? ''}
              error={errorOf('where')}
            />
            <Field
              label="Set, by its tag"
              name="inSet"
              autoComplete="off"
              maxLength={60}
              defaultValue={typed.inSet ?? ''}
              error={errorOf('inSet')}
            />
          </div>
          <SectionHead title="Ratings" aside="as they stand on the plate" />
          <RatingInputs typed={typed} errorOf={errorOf} />
        </>
      )}
      beside={(typed) => <MotorReading typed={typed} units={units} />}
      words={{ save: 'Save', hidden: <input type="hidden" name="record" value={recordId ?? ''} /> }}
    />
  );
}
