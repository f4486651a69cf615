import type { Problem } from '@/lib/plant/reading';
import { figure } from '@/lib/units/figure';
import type { WrittenVolts } from '@/lib/units/read-volts';
import type { RatingInput } from '../plate-reading';
import { powers } from './powers';
import type { Stamped } from './stamped';

/** Which of the voltages and which of the frequencies a row stands for. */
interface Place {
  v: number;
  f: number;
}
type Dimension = 'v' | 'f';

/** Spreads what is stamped over rows: one for each voltage and frequency that belong together. `from` numbers the first. */
export function rows(stamped: Stamped, from: number): { rows: RatingInput[]; problems: Problem[] } {
  const problems: Problem[] = [];
  const tell = (key: string, value: string, says: string) =>
    problems.push({ path: `ratings.${from}.${key}`, value, says });
  const { volts, hertz } = stamped;
  const places = placesOf(volts, hertz);
  const isPaired = volts.length > 1 && places.length === volts.length && hertz.length === volts.length;

  const spread = <T>(key: string, values: T[], written: string, rule: Dimension[]): (T | null)[] => {
    if (values.length < 2) return places.map(() => values[0] ?? null);
    if (isPaired && values.length === volts.length) return places.map(({ v }) => values[v] ?? null);
    const fits = rule.filter((one) => values.length === (one === 'v' ? volts.length : hertz.length));
    const [by, ...more] = fits;
    if (by !== undefined && more.length === 0) return places.map((place) => values[place[by]] ?? null);
    tell(
      key,
      written,
      more.length > 0
        ? `could go with the ${volts.length} voltages or the ${hertz.length} frequencies`
        : mismatch(values.length, rule, stamped),
    );
    return places.map(() => null);
  };

  const power = powers(stamped, tell);
  const rpm = spread(
    'rpm',
    stamped.rpm.map((one) => one.rpm),
    stamped.rpm.map((one) => one.rpm).join('/'),
    ['f'],
  );
  const powerOf = spread(power.key, power.values, power.values.join('/'), ['f']);
  const ampsText = stamped.amps.map((one) => one.join('-')).join('/');
  const amps = spread('amps', stamped.amps, ampsText, ampsGoWith(stamped));
  const pf = spread('pf', stamped.pf, stamped.pf.join('/'), ['f', 'v']);
  const efficiency = spread('efficiencyPct', stamped.efficiency, stamped.efficiency.join('/'), ['f', 'v']);
  const connections = connectionsOf(stamped, tell);

  const built = places.map(({ v, f }, i): RatingInput => {
    const row: RatingInput = {};
    const one = volts[v];
    if (one?.volts != null) row.volts = one.volts;
    if (one?.voltsMin != null) row.voltsMin = one.voltsMin;
    if (one?.voltsMax != null) row.voltsMax = one.voltsMax;
    const cycles = hertz[f];
    if (cycles !== undefined) row.hertz = cycles;
    const kwOrHp = powerOf[i] ?? null;
    if (kwOrHp !== null) row[power.key] = kwOrHp;
    const speed = rpm[i] ?? null;
    if (speed !== null) row.rpm = speed;
    const current = amps[i] ?? null;
    if (current?.length === 1 && current[0] !== undefined) row.amps = current[0];
    else if (current !== null) problems.push(rangeOfAmps(from + i, current, one));
    const connection = connections[v] ?? null;
    if (connection !== null) row.connection = connection;
    const factor = pf[i] ?? null;
    if (factor !== null) row.pf = factor;
    const pct = efficiency[i] ?? null;
    if (pct !== null) row.efficiencyPct = pct;
    return row;
  });
  return { rows: built.filter((row) => Object.keys(row).length > 0), problems };
}

function placesOf(volts: readonly WrittenVolts[], hertz: readonly number[]): Place[] {
  if (volts.length > 1 && volts.length === hertz.length && !isReconnected(volts))
    return volts.map((_, i): Place => ({ v: i, f: i }));
  const vs = volts.length === 0 ? [0] : volts.map((_, i) => i);
  const fs = hertz.length === 0 ? [0] : hertz.map((_, i) => i);
  return vs.flatMap((v) => fs.map((f): Place => ({ v, f })));
}

/**
 * Two voltages of one winding stand as 1 to √3 or 1 to 2 (star and delta; series and parallel). Any other pair beside
 * two frequencies is a voltage for each frequency. Arithmetic of the connections, no source.
 */
function isReconnected(volts: readonly WrittenVolts[]): boolean {
  const [low, high] = volts.map(middle).toSorted((a, b) => a - b);
  if (volts.length !== 2 || low === undefined || high === undefined) return false;
  return [Math.sqrt(3), 2, 2 * Math.sqrt(3)].some((ratio) => Math.abs(high / low / ratio - 1) < NEAR);
}

const NEAR = 0.06; // 220/380 is 1.727, 220/440 and 230/460 are 2, 208-230/460 is 2.1
const middle = ({ volts, voltsMin, voltsMax }: WrittenVolts): number =>
  volts ?? ((voltsMin ?? Number.NaN) + (voltsMax ?? Number.NaN)) / 2;

/** Where both have as many, the currents of two voltages fall as the voltages rise; those of two frequencies do not. */
function ampsGoWith({ volts, hertz, amps }: Stamped): Dimension[] {
  if (volts.length !== hertz.length || volts.length < 2 || amps.length !== volts.length) return ['v', 'f'];
  const power = amps.map((one, i) => (one[0] ?? Number.NaN) * middle(volts[i] as WrittenVolts));
  return Math.max(...power) / Math.min(...power) < 1.15 ? ['v'] : ['v', 'f'];
}

function mismatch(count: number, rule: readonly Dimension[], { volts, hertz }: Stamped): string {
  if (rule.length === 1)
    return `names ${count} figures for ${hertz.length} ${hertz.length === 1 ? 'frequency' : 'frequencies'}: they could be two speeds of one motor or belong to frequencies that are not stamped`;
  return `names ${count} figures for ${volts.length} ${volts.length === 1 ? 'voltage' : 'voltages'}${hertz.length > 1 ? ` and ${hertz.length} frequencies` : ''}: which belongs to which?`;
}

function rangeOfAmps(index: number, current: readonly number[], volts: WrittenVolts | undefined): Problem {
  const over =
    volts?.voltsMin != null ? ` from ${figure(volts.voltsMin)} V to ${figure(volts.voltsMax ?? volts.voltsMin)} V` : '';
  return {
    path: `ratings.${index}.amps`,
    value: current.join('-'),
    says: `is a range of currents${over}: could be ${current.map((one) => figure(one)).join(' or ')} A at the supply's voltage`,
  };
}

function connectionsOf(
  stamped: Stamped,
  tell: (key: string, value: string, says: string) => void,
): (RatingInput['connection'] | null)[] {
  const { volts, connection } = stamped;
  const written = volts.map((one) => one.connection);
  const hasDouble = written.includes('double-star');
  const beside = written.map((one) =>
    one === 'double-star' ? 'parallel-star' : one === 'star' && hasDouble ? 'series-star' : one,
  );
  if (connection.length === 0) return checkedOrder(beside, volts, tell);
  if (beside.some((one) => one !== null) && beside.join() !== connection.join()) {
    tell(
      'connection',
      connection.join(' / '),
      `is stamped beside the voltages as ${beside.join(' / ')}: which one holds?`,
    );
    return [];
  }
  if (connection.length === Math.max(volts.length, 1)) return checkedOrder(connection, volts, tell);
  tell(
    'connection',
    connection.join(' / '),
    `names ${connection.length} connections for ${volts.length} voltages: which belongs to which?`,
  );
  return [];
}

/** The higher voltage of a winding that has both belongs to star. */
function checkedOrder(
  connections: readonly (RatingInput['connection'] | null)[],
  volts: readonly WrittenVolts[],
  tell: (key: string, value: string, says: string) => void,
): (RatingInput['connection'] | null)[] {
  const star = volts[connections.indexOf('star')];
  const delta = volts[connections.indexOf('delta')];
  if (!star || !delta || middle(star) > middle(delta)) return [...connections];
  tell(
    'connection',
    connections.join(' / '),
    `puts star at ${figure(middle(star))} V and delta at ${figure(middle(delta))} V: star belongs to the higher voltage, so the figures or the signs are the wrong way round`,
  );
  return [];
}
