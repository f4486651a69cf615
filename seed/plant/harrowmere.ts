import { awkward } from './awkward';
import type { DemoPlant } from './demo';
import { demoPlant } from './plant';
import { asFound } from './unsuited';

/** Harrowmere Works as it is loaded: 120 sets, 70 motors that wait, the awkward ones among them. */
export function harrowmere(today: string): DemoPlant {
  const byRules = demoPlant({ today });
  const { sets, motors } = awkward(today);
  return { ...byRules, sets: [...asFound(byRules.sets), ...sets], motors: [...byRules.motors, ...motors] };
}
