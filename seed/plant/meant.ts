/**
 * The sets whose own motor is no straight swap for its own place, by tag or by the code of their area, and why the demo
 * means it so. Every other set's own motor must be one, on a drive but for entering its plate: test/seed/demo.test.ts.
 */
export const MEANT: Readonly<Record<string, { verdict: 'check-first' | 'unsuitable'; because: string }>> = {
  BG: { verdict: 'check-first', because: 'a classified place is for a competent person to approve, always' },
  'RF-106': { verdict: 'unsuitable', because: 'it is overloaded: the set review is to find it' },
  'LB-103': { verdict: 'check-first', because: 'its supply is 208 V, its plate 230 V: the set review is to find it' },
};
