import { useState } from 'react';
import { type PictureView, type Sizes, WHOLE } from './picture-view';

/** How a picture is looked at, kept above the form: a refused form is made anew, and the picture stays as it was turned. */
export interface PictureLook {
  view: PictureView;
  /** Null until the picture is there. */
  sizes: Sizes | null;
  setSizes: (sizes: Sizes | null) => void;
  change: (by: (view: PictureView, sizes: Sizes) => PictureView) => void;
  isOpen: boolean;
  setOpen: (isOpen: boolean) => void;
}

export function usePictureLook(): PictureLook & { begin: () => void } {
  const [view, setView] = useState(WHOLE);
  const [sizes, setSizes] = useState<Sizes | null>(null);
  const [isOpen, setOpen] = useState(true);
  const change: PictureLook['change'] = (by) => setView((now) => (sizes === null ? now : by(now, sizes)));
  const begin = () => {
    setView(WHOLE);
    setOpen(true);
  };
  return { view, sizes, setSizes, change, isOpen, setOpen, begin };
}
