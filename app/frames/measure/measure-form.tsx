import { ActionButton } from '../../look/action';
import { ProblemList } from '../../look/problem-list';
import { FaceSeenFields, LengthFields, ON_FACE, ON_FEET, ON_SHAFT, ToolChoice } from './measure-fields';
import type { MeasuredAsked } from './measured-asked';

/** What was measured, in the order in which it is done; the answer is the same page. */
export function MeasureForm({ asked }: { asked: MeasuredAsked }) {
  return (
    <form action="/frames/measure" id="readings" className="max-w-phone">
      <ProblemList problems={asked.problems} />
      <input type="hidden" name="units" value={asked.units} />
      <fieldset>
        <legend className="group">Feet</legend>
        <LengthFields names={ON_FEET} asked={asked} />
      </fieldset>
      <fieldset>
        <legend className="group">Shaft</legend>
        <LengthFields names={ON_SHAFT} asked={asked} />
      </fieldset>
      <fieldset>
        <legend className="group">Face</legend>
        <FaceSeenFields asked={asked} />
        <LengthFields names={ON_FACE} asked={asked} />
      </fieldset>
      <ToolChoice asked={asked} />
      <div className="mt-3 grid">
        <ActionButton>Which frames can it be?</ActionButton>
      </div>
    </form>
  );
}
