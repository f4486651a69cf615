import type { PumpSetInput } from '@/lib/plant/set';
import type { DemoSet } from './demo';

/** What the demo's rules made of a set, put as an engineer would find it years later. */
interface Unsuited {
  because: string;
  /** In place of what the rules made; a motor's plate is never another. */
  load?: Pick<NonNullable<PumpSetInput['load']>, 'shaftKw'>;
  supply?: Pick<NonNullable<PumpSetInput['supply']>, 'volts'>;
}

/** By tag. All invented. */
const UNSUITED: Readonly<Record<string, Unsuited>> = {
  'SK-106': { because: 'the long run to the old cooker was taken out', load: { shaftKw: 8.4 } },
  'CP-102': { because: 'bought for two lines, one was never built', load: { shaftKw: 10.2 } },
  'BG-107': { because: 'the next larger motor was in stock', load: { shaftKw: 5.1 } },
  'RF-111': { because: 'the impeller was trimmed', load: { shaftKw: 3.6 } },
  'EF-111': { because: 'the sludge is thinner since the new screen', load: { shaftKw: 4.9 } },
  'RF-106': { because: 'it pumps the heavier fat since spring', load: { shaftKw: 12.6 } },
  'LB-103': { because: 'the converted office gets two lines of a 208 V system', supply: { volts: 208 } },
};

/** The sets, those named above as they were found. */
export const asFound = (sets: readonly DemoSet[]): DemoSet[] =>
  sets.map((one) => {
    const found = UNSUITED[one.input.tag];
    if (found === undefined) return one;
    const { load, supply } = one.input;
    return {
      ...one,
      input: { ...one.input, load: { ...load, ...found.load }, supply: { ...supply, ...found.supply } },
    };
  });
