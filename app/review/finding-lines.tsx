import Link from 'next/link';
import type { ReactNode } from 'react';
import type { Cured } from '@/lib/register/review/cured';
import type { ReviewFinding, YearlyCost } from '@/lib/review/finding';
import type { ReviewRow } from '@/lib/review/list/row';
import { figure } from '@/lib/units/figure';
import { figuresOfFinding } from '../look/finding-figures';
import { LoadRule } from '../look/load-rule';
import { Tag } from '../look/tag';
import { motorPath, setPath } from '../paths';
import { CureLines } from './cure-lines';
import { kwhText, moneyText, REVIEW_WORDS, URGENCY_WORDS } from './review-words';

/** Findings with their sum and source, what they cost in a year and what would put them right. */
export function FindingLines<T extends ReviewRow & { cured: Cured }>({
  rows,
  currency,
  below,
}: {
  rows: readonly T[];
  currency: string | null;
  /** What stands under each, such as the form that accepts it. */
  below?: (row: T) => ReactNode;
}) {
  return (
    <ol className="history doubts">
      {rows.map((row) => (
        <li key={`${row.finding.rule} ${row.setId}`}>
          <RowHead row={row} />
          <p>
            <bdi>{row.finding.says}</bdi>
          </p>
          <Compared finding={row.finding} />
          <p className="label">{row.finding.cite}</p>
          <CostText cost={row.finding.cost} currency={currency} />
          <CureLines tag={row.tag} cured={row.cured} currency={currency} />
          {below?.(row)}
        </li>
      ))}
    </ol>
  );
}

function RowHead({ row }: { row: ReviewRow }) {
  const { tag, service, area, criticality, motor, loadPct, finding } = row;
  return (
    <>
      <p>
        <Link className="to" href={setPath(tag)}>
          <Tag>{tag}</Tag>
        </Link>{' '}
        <b>{REVIEW_WORDS[finding.rule]}</b>
        <span className="label"> {URGENCY_WORDS[finding.urgency]}</span>
      </p>
      <p className="label">
        <bdi>{[service, area].filter((part) => part !== null).join(', ') || 'what it serves is not told'}</bdi>
        {criticality !== null && `, criticality ${criticality} of 4`}
        {loadPct !== null && `, loaded to ${figure(loadPct, 0)} % of its rating`}, motor{' '}
        <Link className="to" href={motorPath(motor)}>
          <Tag>{motor}</Tag>
        </Link>
      </p>
      {loadPct !== null && <LoadRule small loadPct={loadPct} />}
    </>
  );
}

/** "have 12 %, need 40 %, difference −28 %"; nothing where two words differ that the sentence tells already. */
function Compared({ finding }: { finding: ReviewFinding }) {
  if (finding.difference === null) return null;
  const { have, need, difference, unit } = figuresOfFinding(finding);
  const behind = unit === null ? '' : ` ${unit}`;
  return (
    <p className="figure-line">
      have {have}
      {behind}, need {need}
      {behind}, difference {difference}
      {difference === 'equal' ? '' : behind}
    </p>
  );
}

function CostText({ cost, currency }: { cost: YearlyCost; currency: string | null }) {
  switch (cost.kind) {
    case 'not-energy':
      return null;
    case 'unpriced':
      return (
        <p>
          What it costs in a year is not known{cost.kwh !== null && `, of ${kwhText(cost.kwh)}`}: {cost.why}
        </p>
      );
    case 'known':
      return (
        <p>
          <b>
            {moneyText(cost.money, currency)} a year, {kwhText(cost.kwh)}
          </b>
          <span className="label block">{cost.from}</span>
        </p>
      );
  }
}
