'use client';

import { useState } from 'react';
import type { Units } from '@/lib/fields/field';
import { MOTOR_GROUPS, MOTOR_HEAD, MOTOR_MEASURED, MOTOR_STATE } from '@/lib/fields/motor-fields';
import type { Problem } from '@/lib/plant/reading';
import { Field, SelectField } from '../look/field';
import { PlatePicture } from '../look/plate/plate-picture';
import { usePictureLook } from '../look/plate/use-picture-look';
import { SectionHead } from '../look/section-head';
import { RatingInputs } from '../record/rating-inputs';
import { RecordForm } from '../record/record-form';
import type { RecordState } from '../record/record-state';
import { ELSEWHERE, WHERE_INPUTS } from './motor-place-words';
import { MotorReading } from './motor-reading';
import { PictureChoice } from './picture-choice';
import { PlatePaste } from './plate-paste';
import { saveMotor } from './save-motor';
import { type KeptPicture, usePlatePictures } from './use-plate-pictures';

const GROUPS = [{ title: 'The motor', fields: MOTOR_HEAD }, ...MOTOR_GROUPS, MOTOR_MEASURED, MOTOR_STATE];

/** A motor's plate in the plate's own order, its picture and what was read of it beside. */
export function MotorForm({
  first,
  units,
  recordId,
  shelves,
  kept,
  paste,
}: {
  first: RecordState;
  units: Units;
  recordId: string | null;
  shelves: readonly { value: string; words: string }[];
  /** Photographs of the motor, the newest first. */
  kept: readonly KeptPicture[];
  /** A new motor's plate as text, and what was read of it: with another the fields are made anew, and the picture stays. */
  paste?: { plate: string; problems: readonly Problem[]; unread: readonly string[] };
}) {
  // A refused form is made anew: what was typed in the field of another form is kept here.
  const [text, setText] = useState(paste?.plate ?? '');
  const { begin, ...look } = usePictureLook();
  const pictures = usePlatePictures(kept, begin);
  const { shown } = pictures;
  return (
    <RecordForm
      key={paste?.plate}
      save={saveMotor}
      first={first}
      units={units}
      groups={GROUPS}
      more={WHERE_INPUTS}
      top={<PictureChoice pictures={pictures} />}
      picture={shown && <PlatePicture src={shown.src} name={shown.words} look={look} onFail={pictures.fail} />}
      before={paste && <PlatePaste {...paste} text={text} onText={setText} />}
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
