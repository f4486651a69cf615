import type { SiteSettings } from '@/lib/plant/site-settings';
import type { Finding } from '../finding';
import { hoursOf } from '../hours';
import { type Verdict, verdictOf } from '../verdict';
import { type Cleared, joined, type Share, shareOf } from './share';

/** How a motor would go into a set. */
export interface Fit {
  verdict: Exclude<Verdict, 'unsuitable'>;
  /** Of the whole swap, the base item of every swap among them. */
  hours: number;
  /** Whether it asks for work besides the swap itself, be it to be checked first or not. */
  needsWork: boolean;
  clearedBy: Cleared;
}

/** A share of which there is one object however often it comes. */
export interface Kept {
  number: number;
  share: Share;
  /** With nothing said besides; null: unsuitable. */
  fit: Fit | null;
}

export interface KeptShares {
  /** Of nothing found. */
  nothing: Kept;
  /** Of a block, whatever else was found. */
  blocked: Kept;
  of: (findings: readonly Finding[]) => Kept;
  joined: (a: Kept, b: Kept) => Kept;
}

/** Shares are few and come in millions: each is kept once, and so is what two of them come to. */
export function keptShares(settings: SiteSettings): KeptShares {
  const byText = new Map<string, Kept>();
  const sums: (Kept | undefined)[][] = [];
  const keep = (share: Share): Kept => {
    const text = JSON.stringify(share);
    const known = byText.get(text);
    if (known !== undefined) return known;
    const kept = { number: byText.size, share, fit: fitOf(share, settings) };
    byText.set(text, kept);
    sums.push([]);
    return kept;
  };
  const nothing = keep(shareOf([]));
  return {
    nothing,
    blocked: keep({ grade: 'block', work: [], clearedBy: 'nobody' }),
    of: (findings) => keep(shareOf(findings)),
    joined: (a, b) => {
      if (b === nothing) return a;
      const row = sums[a.number] as (Kept | undefined)[];
      const known = row[b.number];
      if (known !== undefined) return known;
      const sum = keep(joined(a.share, b.share));
      row[b.number] = sum;
      return sum;
    },
  };
}

function fitOf({ grade, work, clearedBy }: Share, settings: SiteSettings): Fit | null {
  const verdict = verdictOf([{ grade }]);
  if (verdict === 'unsuitable') return null;
  const hours = hoursOf(
    work.map((one) => ({ work: one })),
    settings,
  );
  return { verdict, hours, needsWork: work.length > 0, clearedBy };
}
