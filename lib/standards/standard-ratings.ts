import { kwOfHp } from '@/lib/units/power';
import type { Status } from './dimension';
import { citeOf, statusOf, weaker } from './table';
import { iecOutputs } from './tables/iec-outputs';
import { nemaOutputs } from './tables/nema-outputs';

/** A power, a number of poles and the frame the standard assigns to them. */
export interface StandardRating {
  kw: number;
  /** As the standard prints it; null where it prints kW. */
  hp: number | null;
  poles: number;
  frame: string;
  cite: string;
  status: Status;
}

/**
 * The ratings a standard assigns a frame to, in the order of its table. NEMA: totally enclosed fan-cooled motors at 60 Hz;
 * a short-shaft frame (TS) is for direct connection. IEC: the outputs of 50 Hz, which keep their frame at 60 Hz.
 */
export const standardRatings = (system: 'NEMA' | 'IEC'): readonly StandardRating[] => (system === 'NEMA' ? NEMA : IEC);

/** Poles of a synchronous speed at 60 Hz are this over rpm. */
const RPM_POLES_60_HZ = 7200;

const NEMA: readonly StandardRating[] = nemaOutputs.rows
  .filter(({ enclosure }) => enclosure === 'TEFC')
  .map(({ hp, rpm, frame: [frame, frameTexts], enclosureTexts }) => {
    const texts = weaker(frameTexts, enclosureTexts);
    return {
      kw: kwOfHp(hp),
      hp,
      poles: RPM_POLES_60_HZ / rpm,
      frame,
      cite: citeOf('NEMA MG 1-2016 Part 13', texts),
      status: statusOf(texts),
    };
  });

const IEC: readonly StandardRating[] = iecOutputs.rows.map(({ kw, poles, frame: [frame, texts], isBeyond }) => ({
  kw,
  hp: null,
  poles,
  frame,
  cite: citeOf(isBeyond ? 'maker practice, beyond EN 50347' : 'EN 50347 output assignment', texts),
  status: statusOf(texts),
}));
