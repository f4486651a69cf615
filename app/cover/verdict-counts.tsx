import type { Counts } from '@/lib/spares/cover/set-standing';
import { Mark } from '../look/mark';
import { VERDICT_WORDS } from '../look/words';

const ORDER = ['straight-swap', 'swap-with-work', 'check-first'] as const;

/** The heads of three columns, one for each verdict that lets a motor in. */
export function VerdictHeads() {
  return ORDER.map((verdict) => (
    <th key={verdict} scope="col" className="num">
      <Mark verdict={verdict} size="small" /> {VERDICT_WORDS[verdict]}
    </th>
  ));
}

export function VerdictCells({ counts }: { counts: Counts }) {
  return ORDER.map((verdict) => (
    <td key={verdict} className="num">
      {counts[verdict] === 0 ? '–' : counts[verdict]}
    </td>
  ));
}
