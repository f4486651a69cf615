/** What a motor loses in a year where it runs. Null: not known. */
export interface SetLoss {
  /** Null: of no area. */
  area: string | null;
  kwh: number | null;
  money: number | null;
}

export interface AreaLoss {
  area: string | null;
  /** Of the sets of which it is known, whole kWh a year. */
  kwh: number;
  /** In whole hundredths of the site's money. */
  moneyHundredths: number;
  /** So many sets it is known of, and so many not. */
  known: number;
  unknown: number;
}

/** The losses of all motors, area by area, the greatest first. */
export function lossesByArea(sets: readonly SetLoss[]): AreaLoss[] {
  const areas = new Map<string | null, AreaLoss>();
  for (const { area, kwh, money } of sets) {
    const sum = areas.get(area) ?? { area, kwh: 0, moneyHundredths: 0, known: 0, unknown: 0 };
    sum[kwh === null ? 'unknown' : 'known'] += 1;
    if (kwh !== null) sum.kwh += Math.round(kwh);
    if (money !== null) sum.moneyHundredths += Math.round(100 * money);
    areas.set(area, sum);
  }
  return [...areas.values()].sort((a, b) => b.kwh - a.kwh || (a.area ?? '￿').localeCompare(b.area ?? '￿', 'en'));
}
