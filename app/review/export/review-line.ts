import { VERDICT_WORDS } from '@/app/look/words';
import type { FoundRow } from '@/lib/register/review/acceptances';
import type { Cured } from '@/lib/register/review/cured';
import type { Cure } from '@/lib/review/cure/cure';
import { REVIEW_WORDS, URGENCY_WORDS } from '../review-words';

type Cell = string | number | null;

export const reviewHead = (currency: string | null): Cell[] => [
  ...['Tag', 'Serves', 'Area', 'Criticality', 'Motor', 'Load (%)', 'Found', 'How soon'],
  ...['Have', 'Need', 'Difference', 'Unit', 'What it means', 'Source'],
  ...['Energy a year (kWh)', `Money a year (${currency ?? 'site’s'})`, 'Why it is not known', 'State'],
  ...['Accepted until', 'Accepted by', 'Reason'],
  ...['Read first', 'Work at the set', 'Hours of that work'],
  ...['Motor from a shelf', 'Where it waits', 'Verdict', 'Hours', 'More energy a year (kWh)'],
  ...['Rating to buy', 'Its verdict', 'Its hours', 'Its more energy a year (kWh)', 'Why nothing is known'],
];

/** A finding as a row of a sheet; figures stay figures. */
export function reviewLine(row: FoundRow & { cured: Cured }): Cell[] {
  const { tag, service, area, criticality, motor, loadPct, finding, isAccepted, note, cured } = row;
  const { have, need, difference, unit, says, cite, cost } = finding;
  const held = isAccepted ? note : null;
  const look = cureOf(cured, isLook)?.cure;
  const work = cureOf(cured, isWork)?.cure;
  const shelf = cureOf(cured, isShelf);
  const buy = cureOf(cured, isBuy);
  return [
    ...[tag, service, area, criticality, motor, rounded(loadPct)],
    ...[REVIEW_WORDS[finding.rule], URGENCY_WORDS[finding.urgency], have, need, difference, unit, says, cite],
    ...[cost.kind === 'not-energy' ? null : rounded(cost.kwh), cost.kind === 'known' ? hundredths(cost.money) : null],
    ...[cost.kind === 'unpriced' ? cost.why : null, isAccepted ? 'accepted' : 'open'],
    ...[held?.againOn ?? null, held?.by ?? null, held?.reason ?? null],
    ...[look?.reading ?? null, work?.what ?? null, work?.hours ?? null],
    ...[shelf?.cure.motor ?? null, shelf?.shelf ?? null, ...swapCells(shelf)],
    ...[buy?.cure.motor ?? null, ...swapCells(buy), cured.why],
  ];
}

type Shown = Cured['cures'][number];
type ByMotor = Extract<Cure, { kind: 'shelf' | 'buy' }>;

const cureOf = <T extends Cure>({ cures }: Cured, is: (cure: Cure) => cure is T) =>
  cures.flatMap(({ cure, ...rest }) => (is(cure) ? [{ cure, ...rest }] : []))[0];

const isLook = (cure: Cure): cure is Extract<Cure, { kind: 'look' }> => cure.kind === 'look';
const isWork = (cure: Cure): cure is Extract<Cure, { kind: 'work' }> => cure.kind === 'work';
const isShelf = (cure: Cure): cure is ByMotor => cure.kind === 'shelf';
const isBuy = (cure: Cure): cure is ByMotor => cure.kind === 'buy';

function swapCells(one: (Omit<Shown, 'cure'> & { cure: ByMotor }) | undefined): Cell[] {
  if (one === undefined) return [null, null, null];
  const { cure, energy } = one;
  return [VERDICT_WORDS[cure.verdict], cure.hours, rounded(energy?.moreKwhPerYear.value ?? null)];
}

const rounded = (value: number | null): number | null => (value === null ? null : Math.round(value));
const hundredths = (value: number): number => Math.round(100 * value) / 100;
