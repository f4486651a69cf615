import Link from 'next/link';
import type { WorkedOut } from '@/lib/energy/worked-out';
import type { Cured } from '@/lib/register/review/cured';
import type { CureEnergy } from '@/lib/review/cure/cure-energy';
import { figure } from '@/lib/units/figure';
import { Tag } from '../look/tag';
import { VERDICT_WORDS } from '../look/words';
import { candidatePath } from '../paths';
import { kwhText, moneyText } from './review-words';

/** What would put a finding right: work at the set, a motor from a shelf, a standard rating; or why nothing would. */
export function CureLines({ tag, cured, currency }: { tag: string; cured: Cured; currency: string | null }) {
  if (cured.why !== null)
    return (
      <p>
        Nothing is known to put it right: <bdi>{cured.why}</bdi>
      </p>
    );
  return (
    <ul className="cautions">
      {cured.cures.map((one) => (
        <li key={one.cure.kind}>
          <CureText tag={tag} one={one} currency={currency} />
        </li>
      ))}
    </ul>
  );
}

function CureText({ tag, one, currency }: { tag: string; one: Cured['cures'][number]; currency: string | null }) {
  const { cure, energy, shelf } = one;
  switch (cure.kind) {
    case 'look':
      return (
        <>
          <b>Read first:</b> <bdi>{cure.reading}</bdi>
        </>
      );
    case 'work':
      return (
        <>
          <b>Work at the set:</b> <bdi>{cure.what}</bdi>
          {cure.hours !== null && `, ${figure(cure.hours, 1)} h`}
        </>
      );
    case 'shelf':
    case 'buy':
      return (
        <>
          <b>{cure.kind === 'shelf' ? 'From a shelf:' : 'To buy:'}</b>{' '}
          <Link className="to" href={candidatePath(tag, cure.motor)}>
            <Tag>{cure.motor}</Tag>
          </Link>{' '}
          {shelf !== null && shelf !== '' && (
            <>
              (<bdi>{shelf}</bdi>){' '}
            </>
          )}
          {VERDICT_WORDS[cure.verdict].toLowerCase()}, {figure(cure.hours, 1)} h{cure.runs !== null && `; ${cure.runs}`}
          {energy !== null && <EnergyText energy={energy} currency={currency} />}
        </>
      );
  }
}

function EnergyText({ energy, currency }: { energy: CureEnergy; currency: string | null }) {
  const { moreKwhPerYear, moreMoneyPerYear } = energy;
  if (moreKwhPerYear.value === null) return null;
  const more = moreKwhPerYear.value;
  const money = (of: WorkedOut) => (of.value === null ? '' : `, ${moneyText(Math.abs(of.value), currency)}`);
  return `; takes ${kwhText(Math.abs(more))}${money(moreMoneyPerYear)} ${more < 0 ? 'less' : 'more'} in a year`;
}
