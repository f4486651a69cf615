import type { FrameDimensions } from '../dimension';
import { readFrame } from '../dimensions-of';
import { iecFlangeOfFrame } from '../tables/iec-flange-of-frame';
import { iecFootFrames } from '../tables/iec-foot-frames';
import { nemaFaces } from '../tables/nema-faces';
import { nemaFootFrames } from '../tables/nema-foot-frames';

/** A frame that the tables read list, with the face and the poles that decide its figures. */
export interface FrameOption {
  /** As it is stamped and as `readFrame` takes it: "184TC", "112M FF215". */
  frame: string;
  system: 'NEMA' | 'IEC';
  /** Where the shaft depends on them: 2, or 4 for four and more. */
  poles: 2 | 4 | null;
  fit: FrameDimensions;
}

/** Every frame of both families that a motor on the bench can be. Vertical pump bases are left out: they have no feet. */
export const frameOptions = (): readonly FrameOption[] => {
  made ??= [...nema(), ...iec()];
  return made;
};

let made: FrameOption[] | null = null;

function nema(): FrameOption[] {
  const names = [
    ...nemaFootFrames.rows.map(({ frame }) => frame),
    ...nemaFaces.rows.filter(({ kind }) => kind !== 'P').map(({ frame }) => frame),
  ];
  return names.flatMap((frame) => option(frame, 'NEMA', null));
}

function iec(): FrameOption[] {
  return iecFootFrames.rows.flatMap(({ frame, height, shafts }) => {
    const row = iecFlangeOfFrame.rows.find((one) => one.height === height);
    const flanges = [row?.FF, row?.FTStandard, row?.FTLarger].flatMap((cell) => (cell === undefined ? [] : [cell[0]]));
    const poles = shafts.some((shaft) => shaft.poles === '2') ? ([2, 4] as const) : ([null] as const);
    return [frame, ...flanges.map((flange) => `${frame} ${flange}`)].flatMap((name) =>
      poles.flatMap((count) => option(name, 'IEC', count)),
    );
  });
}

function option(frame: string, system: 'NEMA' | 'IEC', poles: 2 | 4 | null): FrameOption[] {
  const read = readFrame(frame, { system, poles });
  return read.ok ? [{ frame, system, poles, fit: read.value }] : [];
}
