/** A set of motors as bits: bit i stands for the i-th motor of the list the screen was made of. */
export type Bits = Uint32Array;

const WORD = 32;

export const noBits = (length: number): Bits => new Uint32Array(Math.ceil(length / WORD));

export function setBit(bits: Bits, i: number): void {
  bits[i >>> 5] = ((bits[i >>> 5] ?? 0) | (1 << (i & 31))) >>> 0;
}

/** Visits every i that is in all of them. */
export function eachInAll(all: readonly Bits[], visit: (i: number) => void): void {
  const [first] = all;
  if (first === undefined) return;
  for (let w = 0; w < first.length; w += 1) {
    let word = first[w] as number;
    for (const bits of all) word &= bits[w] as number;
    while (word !== 0) {
      const lowest = word & -word;
      visit((w << 5) + (31 - Math.clz32(lowest)));
      word ^= lowest;
    }
  }
}
