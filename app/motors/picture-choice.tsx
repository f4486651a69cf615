import { useEffect } from 'react';
import { SectionHead } from '../look/section-head';
import { PictureInput } from '../pictures/picture-input';
import type { PlatePictures } from './use-plate-pictures';

const INPUTS = [
  { id: 'picture-camera', label: 'With the camera', isCamera: true },
  { id: 'picture-file', label: 'A picture of the plate', isCamera: false },
] as const;

/** Where a picture to type from is taken or chosen; it is sent with the form, and kept with the motor. */
export function PictureChoice({
  pictures: { kept, chosen, shown, problem, choose, show },
}: {
  pictures: PlatePictures;
}) {
  // A form that was refused is made anew or emptied: the file that was chosen goes back to where it was.
  useEffect(() => {
    if (chosen === null) return;
    const input = document.getElementById(chosen.at);
    if (!(input instanceof HTMLInputElement)) return;
    const putBack = () => {
      if (input.files?.length !== 0) return;
      const held = new DataTransfer();
      held.items.add(chosen.file);
      input.files = held.files;
    };
    putBack();
    const onReset = () => setTimeout(putBack);
    input.form?.addEventListener('reset', onReset);
    return () => input.form?.removeEventListener('reset', onReset);
  });
  return (
    <section className="screen-only">
      <SectionHead title="Picture of the plate" aside="to type from; it is kept with the motor" />
      <div className="picture-choice">
        {INPUTS.map(({ id, label, isCamera }) => (
          <PictureInput
            key={id}
            id={id}
            label={label}
            isCamera={isCamera}
            error={problem !== null && !isCamera ? problem : null}
            onChange={(event) => {
              const [file] = event.currentTarget.files ?? [];
              if (file === undefined && chosen?.at !== id) return;
              for (const { id: other } of INPUTS) if (other !== id) emptied(other);
              if (!choose(id, file ?? null)) emptied(id);
            }}
          />
        ))}
        {kept.length > 0 && (
          <div className="field">
            <label htmlFor="picture-shown">Beside the form</label>
            <select
              className="in"
              id="picture-shown"
              value={shown?.src ?? ''}
              onChange={(event) => show(event.currentTarget.value)}
            >
              {chosen !== null && <option value={chosen.src}>the one just chosen</option>}
              {kept.map(({ src, words }) => (
                <option key={src} value={src}>
                  {words}
                </option>
              ))}
              <option value="">none</option>
            </select>
          </div>
        )}
      </div>
    </section>
  );
}

function emptied(id: string): void {
  const input = document.getElementById(id);
  if (input instanceof HTMLInputElement) input.value = '';
}
