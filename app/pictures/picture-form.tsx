import type { PictureOf } from '@/lib/register/picture-of';
import { ActionButton } from '../look/action';
import { Field } from '../look/field';
import { PictureInput } from './picture-input';

/** Sends a photograph: a plain form, which works before any script does. */
export function PictureForm({ of, path }: { of: PictureOf; path: string }) {
  return (
    <details className="screen-only">
      <summary className="more">Send a photograph</summary>
      <form action="/pictures" method="post" encType="multipart/form-data">
        <input type="hidden" name={`${of.thing}Id`} value={of.id} />
        <input type="hidden" name="to" value={path} />
        <PictureInput id="picture-camera" label="With the camera" isCamera />
        <PictureInput id="picture-file" label="Or one that is here already" isCamera={false} />
        <Field
          label="What it shows"
          name="caption"
          id="picture-caption"
          required={false}
          autoComplete="off"
          maxLength={200}
          hint="Plate, terminal box, coupling."
        />
        <div className="mt-3 grid">
          <ActionButton second>Keep the photograph</ActionButton>
        </div>
      </form>
    </details>
  );
}
