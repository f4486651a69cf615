/** Two lengths are one where a caliper tells no difference: 1-1/8 in is printed 28.575 and typed 28.58. */
export const isSameLength = (a: number, b: number): boolean => Math.abs(a - b) <= CALIPER_MM;

// 28 mm and 1-1/8 in differ by 0.575 mm, 38 mm and 1-1/2 in by 0.1 mm: one does not fit the other.
const CALIPER_MM = 0.05;
