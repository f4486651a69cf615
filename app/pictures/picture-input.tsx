import type { ChangeEvent } from 'react';
import { PICTURE_TYPES } from './picture-limits';

/** Where a photograph is chosen. With `isCamera` a phone opens its camera; where none is held in a hand it is not shown. */
export function PictureInput({
  id,
  label,
  isCamera,
  error,
  onChange,
}: {
  id: string;
  label: string;
  isCamera: boolean;
  error?: string | null;
  onChange?: (event: ChangeEvent<HTMLInputElement>) => void;
}) {
  return (
    <div className={isCamera ? 'field in-hand' : 'field'}>
      <label htmlFor={id}>{label}</label>
      <input
        className="in"
        type="file"
        id={id}
        name="picture"
        accept={PICTURE_TYPES.join(',')}
        aria-invalid={error ? true : undefined}
        aria-describedby={error ? `${id}-wrong` : undefined}
        onChange={onChange}
        {...(isCamera && { capture: 'environment' as const })}
      />
      {error && (
        <p className="wrong" id={`${id}-wrong`} role="alert">
          {error}
        </p>
      )}
    </div>
  );
}
