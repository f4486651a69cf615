import { PHASE_SHARE } from '@/lib/matching/starting/phase-share';
import type { PumpSet } from '@/lib/plant/set';
import { figure } from '@/lib/units/figure';
import { caseOf, type ReviewCase } from '../review-case';
import type { ReviewRule } from '../rule';
import type { Change } from './cure';
import { lowerFirst } from './lower-first';

type Supply = PumpSet['supply'];
interface Part {
  what: string;
  hours: number | null;
  /** Only this part of the supply told, the others not. */
  alone: Partial<Supply>;
  differs: Partial<Supply>;
}

const NOTHING: Partial<Supply> = { overloadMinA: null, overloadMaxA: null, contactorA: null, cableA: null };
const CABLE_MARGIN = 1.25; // NEC 430.22, as the engine asks

/** An overload, contactor, cable or drive that carries the plate's amps, whichever of them do not. */
export function suitingProtection({ set, motor, context, by }: ReviewCase, rule: ReviewRule): Change[] {
  const amps = context.row.amps;
  if (amps === null) return [];
  const { supply } = set;
  const dialA = supply.start === 'star-delta' && supply.overloadIn === 'phase' ? amps * PHASE_SHARE : amps;
  const cableA = Math.ceil(10 * CABLE_MARGIN * amps) / 10;
  const { hours } = by.settings;
  const parts: Part[] = [
    {
      what: `Fit an overload whose dial takes ${figure(dialA)} A and set it so`,
      hours: hours.overload,
      alone: { overloadMinA: supply.overloadMinA, overloadMaxA: supply.overloadMaxA },
      differs: { overloadMinA: dialA, overloadMaxA: dialA },
    },
    {
      what: `Fit a contactor for at least ${figure(amps)} A`,
      hours: null,
      alone: { contactorA: supply.contactorA },
      differs: { contactorA: amps },
    },
    {
      what: `Lay a cable for at least ${figure(cableA, 1)} A`,
      hours: null,
      alone: { cableA: supply.cableA },
      differs: { cableA },
    },
    {
      what: `Fit a drive for at least ${figure(amps)} A`,
      hours: null,
      alone: {},
      differs: { drive: supply.drive === null ? null : { ...supply.drive, ratedA: amps } },
    },
  ];
  const isRaised = ({ alone, differs }: Part): boolean => {
    // The drive is asked with the rest left out; the rest with a drive that carries it.
    const drive = 'drive' in differs ? supply.drive : supply.drive === null ? null : { ...supply.drive, ratedA: null };
    return rule(caseOf({ ...set, supply: { ...supply, ...NOTHING, ...alone, drive } }, motor, by)) !== null;
  };
  const needed = parts.filter(isRaised);
  if (needed.length === 0) return [];
  const known = needed.every((one) => one.hours !== null);
  return [
    {
      what: needed.map(({ what }, i) => (i === 0 ? what : lowerFirst(what))).join('; '),
      hours: known ? needed.reduce((sum, one) => sum + Number(one.hours), 0) : null,
      set: { ...set, supply: Object.assign({ ...supply }, ...needed.map(({ differs }) => differs)) },
    },
  ];
}
