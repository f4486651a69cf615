/** Where a motor is, as the form's choice names it: "on-shelf ID", "in-set", "at-repair" ... */
export const WHERE_INPUTS = ['where', 'inSet'] as const;

export const ELSEWHERE = [
  { value: 'in-set', words: 'in the set named beside' },
  { value: 'at-repair', words: 'at repair' },
  { value: 'on-order', words: 'on order' },
  { value: 'scrapped', words: 'scrapped' },
] as const;
