import type { Seen } from '@/lib/plant/fault';

/** Swaps from before the register, so that histories have something to tell. Months are counted back from today. */
export interface DemoPast {
  monthsAgo: number;
  set: string;
  motorIn: string;
  motorOut: string | null;
  outTo: 'at-repair' | 'scrapped' | null;
  why: string;
  note: string | null;
  hours: number | null;
}

export const PAST: readonly DemoPast[] = [
  {
    monthsAgo: 97,
    set: 'OH-201',
    motorIn: 'M-0501',
    motorOut: 'M-0091',
    outTo: 'scrapped',
    why: 'Winding to earth after the roof leaked',
    note: 'The last 254U of the old stock went in.',
    hours: 3.5,
  },
  {
    monthsAgo: 31,
    set: 'SL-201',
    motorIn: 'M-0503',
    motorOut: 'M-0092',
    outTo: 'scrapped',
    why: 'Bearing, drive end',
    note: null,
    hours: 3,
  },
  {
    monthsAgo: 2,
    set: 'SK-201',
    motorIn: 'M-0502',
    motorOut: 'M-0511',
    outTo: 'at-repair',
    why: 'Syrup in the terminal box',
    note: 'The 215T stood on a borrowed hub until the long shaft came back.',
    hours: 4.25,
  },
];

/** What was reported and is still open. */
export const FAULTS: readonly { set: string; seen: readonly Seen[]; says: string | null }[] = [
  { set: 'OH-201', seen: ['trip', 'smell'], says: 'On overload after ten minutes, smells of varnish.' },
  { set: 'SL-202', seen: ['will-not-start'], says: 'Hums and does not turn; the gear turns freely by hand.' },
  {
    set: 'OR-201',
    seen: [],
    says: 'Stands still. No plate on the motor, somebody painted over it and then it fell off.',
  },
  { set: 'EF-201', seen: ['noise'], says: 'Growls at the upper bearing, getting louder since Monday.' },
];

/** A fault that was mended since: the swap is recorded as a technician would, with its judgement. */
export const MENDED = {
  set: 'CP-201',
  says: 'Water in the terminal box, earth leakage trips.',
  motorIn: 'M-0516',
  why: 'Water in the winding',
} as const;
