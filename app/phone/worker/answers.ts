import type { AskName, Asks } from '../asked';

/** How some of what the page may ask is answered. */
export type Answers<K extends AskName> = {
  [One in K]: (told: Asks[One]['in']) => Asks[One]['out'] | Promise<Asks[One]['out']>;
};
