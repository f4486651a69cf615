/** A power in kW is stamped rounded: 7.5 hp is 5.59 kW, stamped 5.6 or 5.5. Neighbouring sizes are 20 % apart and more. */
const ROUNDED = 0.02;

/** Whether two powers in kW are one rating of the same series. */
export const isSameSize = (kw: number, otherKw: number): boolean => Math.abs(kw / otherKw - 1) <= ROUNDED;
