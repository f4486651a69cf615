import { figure } from '@/lib/units/figure';

const END_PCT = 120;
/** Below this load a motor counts as oversized. */
const OVERSIZED_PCT = 40;

/** Load as a drafted rule from 0 to 120 % with a pointer; `small` for table cells. Null: not known, said in words. */
export function LoadRule({ loadPct, small }: { loadPct: number | null; small?: true }) {
  if (loadPct === null) return small ? <span>not known</span> : <p className="pt-3">The load is not known.</p>;
  const place = share(Math.min(Math.max(loadPct, 0), END_PCT));
  const name = `Load ${figure(loadPct, 0)} percent of the rating; under ${OVERSIZED_PCT} percent counts as oversized`;
  if (small)
    return (
      <span className="load-small" role="img" aria-label={name}>
        <span className="zone" style={{ left: 0, width: share(OVERSIZED_PCT) }} />
        <span className="at" style={{ left: place }} />
      </span>
    );
  const side = loadPct < 15 ? 'at low' : loadPct > 105 ? 'at high' : 'at';
  return (
    <div className="load" role="img" aria-label={name}>
      <span className="zone" style={{ left: 0, width: share(OVERSIZED_PCT) }} />
      <span className="rule" />
      <span className={side} style={{ left: place }}>
        load {figure(loadPct, 0)} %
      </span>
      <i className="first" style={{ left: 0 }}>
        0
      </i>
      <i style={{ left: share(OVERSIZED_PCT) }}>{OVERSIZED_PCT}</i>
      <i style={{ left: share(100) }}>100</i>
      <i className="last" style={{ left: '100%' }}>
        {END_PCT} %
      </i>
    </div>
  );
}

const share = (pct: number) => `${(100 * pct) / END_PCT}%`;
