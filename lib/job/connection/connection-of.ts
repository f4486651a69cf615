import type { Context } from '@/lib/matching/context';
import { startOf } from '@/lib/matching/starting/start-of';
import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import type { Status } from '@/lib/standards/dimension';
import { leadConnections } from '@/lib/standards/tables/lead-connections';
import { figure } from '@/lib/units/figure';
import { type Link, linkOf } from './link-of';

export const PLATE_DECIDES = 'The diagram on the plate or in the terminal box decides.';
const FOLLOW = 'Follow the plate’s diagram.';

/** Which leads go where at the set's supply, or why that is not told. */
export type Connection =
  | { kind: 'unknown'; says: string }
  | {
      kind: 'known';
      link: Link;
      /** The volts of the plate's row; null where it prints a range alone. */
      volts: number | null;
      lines: readonly (readonly number[])[];
      joined: readonly (readonly number[])[];
      /** What else is to be known of these leads, one sentence each; the last says who decides. */
      says: readonly string[];
      status: Status;
    };

export function connectionOf(set: PumpSet, motor: Motor, context: Context): Connection {
  const { row } = context;
  if (motor.winding === null) return unknown('How the winding is made is not in the register.');
  if (motor.phases === 1) return unknown('It is a single-phase motor.');
  if (row.volts === null) return unknown('The supply’s volts are not known.');
  if (row.plate === null || !isForSupply(row.fluxRatio)) return unknown('The plate has no row for this supply.');
  const start = startOf(set, motor, context);
  const link = linkOf(motor, row, start);
  const found = leadConnections.rows.find((one) => one.winding === motor.winding && one.link === link);
  if (link === null || found === undefined)
    return unknown('Which of its connections is for this supply is not printed.');
  const { lines, joined, status } = found;
  return {
    ...{ kind: 'known', link, volts: row.plate.volts, lines, joined, status },
    says: [...starterSays(start, motor, link), ...memorySays(status), PLATE_DECIDES],
  };
}

/** Farther from its plate than a motor may run, no leads are drawn: NEMA MG 1 12.44.1 (read in one text). */
const WITHIN = 0.1;
const isForSupply = (fluxRatio: number | null) => fluxRatio !== null && Math.abs(fluxRatio - 1) <= WITHIN;

const unknown = (why: string): Connection => ({ kind: 'unknown', says: `${why} ${FOLLOW}` });

function starterSays(start: ReturnType<typeof startOf>, { winding }: Motor, link: Link): string[] {
  if (start === 'star-delta' && link.endsWith('delta'))
    return [
      'As it runs: lead the six ends to the star-delta starter, which makes both, and take the links out of the box.',
    ];
  if (winding !== 'part-winding-6') return [];
  return start === 'part-winding'
    ? ['As it runs: T1, T2, T3 go to the first contactor of the starter, T7, T8, T9 to the second.']
    : ['Both halves go to the line together.'];
}

const memorySays = (status: Status): string[] =>
  status === 'memory' ? ['These leads are from memory: check against the plate’s diagram.'] : [];

/** "460 V, series star". */
export const connectionName = ({ link, volts }: Connection & { kind: 'known' }): string =>
  [volts === null ? null : `${figure(volts)} V`, link.replace('-', ' ')].filter((part) => part !== null).join(', ');
