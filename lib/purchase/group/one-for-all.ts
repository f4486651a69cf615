import { leastKwOf } from '@/lib/matching/buy/least-kw';
import { motorAskedFor } from '@/lib/matching/buy/motor-asked-for';
import type { RatingAsked } from '@/lib/matching/buy/ratings-asked-for';
import type { Motor } from '@/lib/plant/motor';
import { AUXILIARIES } from '@/lib/plant/motor-words';
import type { PumpSet } from '@/lib/plant/set';
import { areaInWords } from '@/lib/standards/area-order';
import { type Contradiction, shared } from './contradiction';
import { oneMount } from './one-mount';
import { oneRow } from './one-row';
import { greatest, least, strictestArea, strictestIp, strongest } from './strictest';

/** One motor asked for several sets, and what no one motor can be for all of them. */
export interface OneForAll {
  motor: Motor;
  contradictions: Contradiction[];
}

/**
 * What one motor of that rating must be to stand in every one of the sets: the strictest of what each asks. Where there is
 * no stricter, it is asked as most have it, and the contradiction names the sets. Of no sets nothing can be asked.
 */
export function oneForAll(sets: readonly PumpSet[], asked: RatingAsked): OneForAll {
  const contradictions: Contradiction[] = [];
  const mount = oneMount(sets, asked, contradictions);
  const each = sets.map((set) => ({ set, motor: motorAskedFor(set, asked.system, asked.rating, mount) }));
  const [first] = each;
  if (first === undefined) throw new Error('nothing can be asked for no sets');
  const all = <K extends keyof Motor>(key: K): Motor[K][] => each.map(({ motor }) => motor[key]);
  const alike = <T>(id: string, label: string, of: (motor: Motor) => T | null): T | null =>
    shared(
      each.map(({ set, motor }) => ({ tag: set.tag, value: of(motor) })),
      { id, label },
      String,
      contradictions,
    );
  const ratings = oneRow(
    each.flatMap(({ set, motor }) => motor.ratings.map((row) => ({ tag: set.tag, row, leastKw: leastKwOf(set) }))),
    contradictions,
  );
  const motor: Motor = {
    ...first.motor,
    ratings,
    winding: alike('connection', 'Winding', ({ winding }) => winding),
    design: strongest(all('design'), LETTERS),
    lockedRotorPct: greatest(all('lockedRotorPct')),
    breakdownPct: greatest(all('breakdownPct')),
    maxRpm: greatest(all('maxRpm')),
    ip: ipOf(each, contradictions),
    ambientC: greatest(all('ambientC')),
    driveDuty: strongest(all('driveDuty'), ['none', 'general', 'inverter']),
    constantTorqueRange: greatest(all('constantTorqueRange')),
    terminalBox: alike('terminal-box', 'Terminal box', ({ terminalBox }) => terminalBox),
    washdown: strongest(all('washdown'), ['none', 'painted', 'stainless']),
    classification: areaOf(each, contradictions),
    has: AUXILIARIES.filter((one) => all('has').some((has) => has?.includes(one))),
    brake: {
      torqueNm: greatest(all('brake').map(({ torqueNm }) => torqueNm)),
      volts: alike('brake-volts', 'Brake, coil volts', ({ brake }) => brake.volts),
    },
    massKg: least(all('massKg')),
    lengthMm: least(all('lengthMm')),
  };
  return { motor, contradictions };
}

/** NEMA design C and IEC design H start harder than B and N. */
const LETTERS: readonly Motor['design'][] = ['B', 'N', 'C', 'H'];

type Each = readonly { set: PumpSet; motor: Motor }[];

function ipOf(each: Each, noted: Contradiction[]): string | null {
  const ip = strictestIp(each.flatMap(({ motor }) => (motor.ip === null ? [] : [motor.ip])));
  if (ip !== 'conflict') return ip;
  const told = each.map(({ set, motor }) => ({ tag: set.tag, value: motor.ip }));
  return shared(told, { id: 'enclosure', label: 'Degree of protection' }, String, noted);
}

function areaOf(each: Each, noted: Contradiction[]): Motor['classification'] {
  const area = strictestArea(
    each.flatMap(({ motor }) => (motor.classification === null ? [] : [motor.classification])),
  );
  if (area !== 'conflict') return area;
  const told = each.map(({ set, motor }) => ({ tag: set.tag, value: motor.classification }));
  return shared(told, { id: 'area', label: 'Area classification' }, areaInWords, noted);
}
