import type { FrameOption } from './frame-options';

/** "112M", "225M, 2 poles"; a number of two digits is a frame of both families: "56 (NEMA)". */
export function nameOf({ frame, poles, system }: Pick<FrameOption, 'frame' | 'poles' | 'system'>): string {
  const name = IN_BOTH.includes(frame) ? `${frame} (${system})` : frame;
  return poles === null ? name : `${name}, ${poles === 2 ? '2 poles' : '4 poles and more'}`;
}

/** 56 stands 3.5 in high in MG 1 and 56 mm in IEC 60072-1. */
const IN_BOTH = ['56'];
