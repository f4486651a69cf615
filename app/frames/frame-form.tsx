import { ActionButton } from '../look/action';
import { Field } from '../look/field';

/** A plain form, whose answer is the page of the frame. */
export function FrameForm({ frame, mounting, poles }: { frame: string; mounting: string; poles: string }) {
  return (
    <form action="/frames" className="max-w-phone">
      <Field
        label="Frame"
        name="frame"
        defaultValue={frame}
        maxLength={40}
        autoComplete="off"
        required
        hint="As stamped: 184TC, 254JM, 112M, 182/4T, or a face alone: FF165."
      />
      <div className="two">
        <Field
          label="Mounting"
          name="mounting"
          defaultValue={mounting}
          maxLength={40}
          autoComplete="off"
          required={false}
          hint="IM B35, for one."
        />
        <Field
          label="Poles"
          name="poles"
          defaultValue={poles}
          maxLength={2}
          inputMode="numeric"
          autoComplete="off"
          required={false}
          hint="Where the shaft depends on it."
        />
      </div>
      <div className="mt-4 grid">
        <ActionButton>Show the frame</ActionButton>
      </div>
    </form>
  );
}
