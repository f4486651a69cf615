import { customaryPair } from '@/lib/standards/customary-pair';
import { figure } from '@/lib/units/figure';
import { hpOfKw, kwOfHp } from '@/lib/units/power';
import type { Stamped } from './stamped';

/**
 * The power of the plate in one unit. Where hp and kW are both stamped and agree, the one that stands first on their
 * line, or hp when they stand on two lines. Where they do not agree, neither: a problem names both.
 */
export function powers(
  { hp, kw, firstPower }: Stamped,
  tell: (key: string, value: string, says: string) => void,
): { key: 'hp' | 'kw'; values: number[] } {
  if (kw.length === 0) return { key: 'hp', values: hp };
  if (hp.length === 0) return { key: 'kw', values: kw };
  const key = firstPower ?? 'hp';
  const written = `${hp.join('/')} hp, ${kw.join('/')} kW`;
  if (hp.length !== kw.length) {
    tell(key, written, `names ${hp.length} powers in hp and ${kw.length} in kW: which belong together?`);
    return { key, values: [] };
  }
  const apart = hp.findIndex((one, i) => !isSame(one, kw[i] as number));
  if (apart < 0) return { key, values: key === 'hp' ? hp : kw };
  const [inHp, inKw] = [hp[apart] as number, kw[apart] as number];
  tell(
    key,
    written,
    `${figure(inHp)} hp is ${figure(kwOfHp(inHp))} kW and ${figure(inKw)} kW is ${figure(hpOfKw(inKw))} hp: which one holds?`,
  );
  return { key, values: [] };
}

function isSame(hp: number, kw: number): boolean {
  if (customaryPair(kwOfHp(hp), kw)) return true;
  if (Math.abs(kw / kwOfHp(hp) - 1) <= WRITTEN_SHORT) return true;
  return hp === 5.5 && kw === 4; // The usual pair of IEC frame 112M: common practice, no source.
}

const WRITTEN_SHORT = 0.01; // 3.7 kW for 3.73, 11.2 for 11.19
