import { useState } from 'react';
import { MOST_PICTURE_MB, PICTURE_TYPES } from '../pictures/picture-limits';

/** A picture that the register keeps already. */
export interface KeptPicture {
  src: string;
  words: string;
}

/** One that was chosen on this device, and is kept with the motor when that is saved. */
export interface ChosenPicture {
  file: File;
  src: string;
  /** The input in which it was chosen. */
  at: string;
}

export interface PlatePictures {
  kept: readonly KeptPicture[];
  chosen: ChosenPicture | null;
  /** What stands beside the form. */
  shown: KeptPicture | null;
  problem: string | null;
  /** False: it is not taken, and `problem` says why. */
  choose: (at: string, file: File | null) => boolean;
  show: (src: string) => void;
  /** What is shown turned out to be no picture. */
  fail: () => void;
}

export function usePlatePictures(kept: readonly KeptPicture[], onShown: () => void): PlatePictures {
  const [chosen, setChosen] = useState<ChosenPicture | null>(null);
  // A motor has other photographs too: its box, its base.
  const first = kept.find(({ words }) => /plate/i.test(words)) ?? kept[0] ?? null;
  const [src, setSrc] = useState<string | null>(first?.src ?? null);
  const [problem, setProblem] = useState<string | null>(null);
  const show = (next: string | null) => {
    setSrc(next);
    onShown();
  };
  const choose: PlatePictures['choose'] = (at, file) => {
    if (chosen !== null) URL.revokeObjectURL(chosen.src);
    const wrong = file === null ? null : wrongWith(file);
    setProblem(wrong);
    const next = file === null || wrong !== null ? null : { file, at, src: URL.createObjectURL(file) };
    setChosen(next);
    show(next?.src ?? first?.src ?? null);
    return wrong === null;
  };
  const own = chosen === null ? [] : [{ src: chosen.src, words: chosen.file.name }];
  const shown = [...own, ...kept].find((one) => one.src === src) ?? null;
  const fail = () => {
    setProblem('This picture cannot be shown: it is damaged, or none.');
    setSrc(null);
  };
  return { kept, chosen, shown, problem, choose, fail, show: (next) => show(next === '' ? null : next) };
}

function wrongWith({ size, type }: File): string | null {
  if (!PICTURE_TYPES.includes(type)) return 'This cannot be shown or kept: send JPEG, PNG or WebP.';
  return size > MOST_PICTURE_MB * 1024 * 1024
    ? `This picture is larger than ${MOST_PICTURE_MB} MB. Set the camera to a smaller size.`
    : null;
}
