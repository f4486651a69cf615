'use client';

import { useSyncExternalStore } from 'react';
import { PictureButtons } from './picture-buttons';
import { PictureWindow } from './picture-window';
import type { PictureLook } from './use-picture-look';

/**
 * A picture of a plate beside the form into which it is typed: above it and sticking to the top on a phone. Without
 * script it stands still.
 */
export function PlatePicture({
  src,
  name,
  look,
  onFail,
}: {
  src: string;
  name: string;
  look: PictureLook;
  /** It is no picture. */
  onFail: () => void;
}) {
  const hasScript = useSyncExternalStore(never, isBrowser, isServer);
  const { isOpen, setOpen, view } = look;
  const told = [
    view.scale !== 1 && `${Math.round(view.scale * 100)} %`,
    view.turns !== 0 && `turned ${view.turns * 90}°`,
  ].filter(Boolean);
  return (
    <details
      className="plate-picture screen-only"
      open={isOpen}
      onToggle={(event) => setOpen(event.currentTarget.open)}
    >
      <summary className="more">
        Picture of the plate
        <span className="label" aria-live="polite">
          {told.length === 0 ? <bdi>{name}</bdi> : told.join(', ')}
        </span>
      </summary>
      <PictureWindow key={src} src={src} look={look} onFail={onFail} />
      {hasScript && <PictureButtons look={look} />}
    </details>
  );
}

const never = () => () => {};
const isBrowser = () => true;
const isServer = () => false;
