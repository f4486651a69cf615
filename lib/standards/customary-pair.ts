import { kwOfHp } from '@/lib/units/power';
import { customaryPairs } from './tables/customary-pairs';

/**
 * Whether one of two rated powers in kW is a horsepower and the other the kW the trade stamps for it: 5 hp, which is
 * 3.73 kW, and 3.7 kW. 10 CFR 431.25 (read in two texts up to 200 hp, above from memory).
 */
export function customaryPair(kw: number, otherKw: number): boolean {
  for (const { ofHp, stamped } of PAIRS)
    if ((isNear(kw, ofHp) && isNear(otherKw, stamped)) || (isNear(kw, stamped) && isNear(otherKw, ofHp))) return true;
  return false;
}

const PAIRS = customaryPairs.rows.map(({ hp, kw }) => ({ ofHp: kwOfHp(hp), stamped: kw[0] }));

/** 3.73 kW for 5 hp, 0.33 hp for a third. */
const isNear = (kw: number, exact: number) => Math.abs(kw / exact - 1) <= WRITTEN_SHORT;
const WRITTEN_SHORT = 0.005;
