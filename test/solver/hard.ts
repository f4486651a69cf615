import type { Programme } from '@/lib/spares/hold/programme';

/** Every third row by a fixed rule: nothing in it dominates much, so that it is not solved at once. */
export function hard(columns: number, rowCount: number): Programme {
  let state = 12_345;
  const next = () => {
    state = (state * 1_103_515_245 + 12_345) % 2_147_483_648;
    return state / 2_147_483_648;
  };
  const of = Array.from({ length: columns }, (_, i) => ({
    cost: 90 + Math.floor(20 * next()),
    tie: 1,
    rows: Array.from({ length: rowCount }, (_, row) => row).filter((row) => row % columns === i || next() < 0.12),
  }));
  return { rowCount, columns: of };
}
