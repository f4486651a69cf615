import type { Motor } from '@/lib/plant/motor';
import type { IeClass } from '@/lib/plant/site-settings';
import { type EfficiencyLevel, nominalEfficiency } from '@/lib/standards/nominal-efficiency';
import { known, unknown, type WorkedOut } from './worked-out';

/** What NEMA MG 1 prints for 60 Hz; IE3 at 60 Hz is the premium level, IE2 the energy-efficient one. */
const AT_60_HZ: Partial<Record<IeClass, EfficiencyLevel>> = { IE2: 'energy-efficient', IE3: 'premium' };

/** The least nominal full-load efficiency, %, of a class for such a motor. Known for 50 Hz, and for IE2 and IE3 at 60 Hz. */
export function classEfficiency(
  ieClass: IeClass,
  { poles, enclosure }: Pick<Motor, 'poles' | 'enclosure'>,
  kw: number | null,
  hertz: number | null,
): WorkedOut {
  if (kw === null) return unknown('The rated power is not known, and every class goes by it.');
  if (poles === null) return unknown('The poles are not known, and every class goes by them.');
  const level = hertz === 50 ? ieClass : hertz === 60 ? AT_60_HZ[ieClass] : undefined;
  if (level === undefined)
    return unknown(hertz === null ? 'The hertz are not known.' : `No table of ${ieClass} at ${hertz} Hz is at hand.`);
  const build = enclosure === 'ODP' || enclosure === 'DP' ? 'open' : 'enclosed';
  const nominal = nominalEfficiency(level, kw, poles, build);
  return nominal === null
    ? unknown(`${ieClass} has no figure for this power and these poles.`)
    : known(nominal.pct, `nominal of ${ieClass}: ${nominal.cite}`);
}
