/** A set of motors as bits: bit i stands for the i-th motor of the list the screen was made of. */
export type Bits = Uint32Array;

const WORD = 32;

export const noBits = (length: number): Bits => new Uint32Array(Math.ceil(length / WORD));

export function setBit(bits: Bits, i: number): void {
  bits[i >>> 5] = ((bits[i >>> 5] ?? 0) | (1 << (i & 31))) >>> 0;
}

/** Visits every i that is in all three. */
export function eachInAll(a: Bits, b: Bits, c: Bits, visit: (i: number) => void): void {
  for (let w = 0; w < a.length; w += 1) {
    let word = ((a[w] as number) & (b[w] as number) & (c[w] as number)) >>> 0;
    while (word !== 0) {
      const lowest = word & -word;
      visit((w << 5) + (31 - Math.clz32(lowest)));
      word = (word ^ lowest) >>> 0;
    }
  }
}
