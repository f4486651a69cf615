import type { Motor } from '@/lib/plant/motor';
import type { PumpSet } from '@/lib/plant/set';
import { figure } from '@/lib/units/figure';
import type { Context } from '../context';
import { plateRows } from '../context/plate-rows';
import { block, type Compared, type Finding, needsWork, toRead } from '../finding';

/**
 * Is the winding in delta at line voltage, with both ends of every phase brought out? Null: it is, by a declared
 * winding, a √3 pair of rows, or six leads on an IEC motor.
 */
export function starDelta(set: PumpSet, candidate: Motor, context: Context, compared: Compared): Finding | null {
  const about = { ...compared, cite: CITE };
  const closed = bothEndsIn(candidate);
  if (closed !== null) return noDelta(set, closed, context, about);
  const { link, volts } = context.row;
  if (link === 'star')
    return noDelta(
      set,
      `At ${volts === null ? 'line voltage' : `${figure(volts, 1)} V`} this motor is in star`,
      context,
      about,
    );
  const fits = isAtLine(context);
  if (fits === false) return noDelta(set, 'The plate has no delta at line voltage', context, about);
  if (fits === null) return toRead(about, 'Whether it is in delta at line voltage is unknown.', DIAGRAM, 10);
  if (candidate.winding === 'star-delta-6' || candidate.winding === 'star-delta-12') return null;
  const isSixLeadIec = candidate.leads === 6 && context.fit.system === 'IEC';
  // A pair printed at another frequency shows both ends out as well.
  if (link === 'delta' && (isSixLeadIec || hasPair(candidate))) return null;
  return toRead(
    about,
    'Not shown to be in delta at line voltage with both ends of each phase brought out.',
    DIAGRAM,
    10,
  );
}

const CITE =
  'star-delta start needs six leads and delta at line voltage: lead tables (read in one text), rule from memory';
const DIAGRAM = 'Read the connection diagram in the terminal box: six ends, delta at line voltage';
const WITHIN = 0.1; // MG 1-12.44.1

/** Why no starter can reach both ends of each phase; null where nothing says so. */
function bothEndsIn({ winding, leads }: Motor): string | null {
  if (winding === 'star-9' || winding === 'delta-9' || winding === 'part-winding-6')
    return `A ${winding} winding has no star-delta link`;
  if (winding === null && leads !== null && leads !== 6 && leads !== 12)
    return `${leads} leads do not bring out both ends of each phase`;
  return null;
}

function hasPair(candidate: Motor): boolean {
  for (const { isPaired } of plateRows(candidate)) if (isPaired) return true;
  return false;
}

/** The row serves line voltage, on any frequency by its flux; null where volts are unknown. */
function isAtLine({ row }: Context): boolean | null {
  if (row.fluxRatio === null) return null;
  const low = row.plate?.voltsMin ?? null;
  const high = row.plate?.voltsMax ?? null;
  if (
    row.kind === 'plated' &&
    row.volts !== null &&
    low !== null &&
    high !== null &&
    row.volts >= low &&
    row.volts <= high
  )
    return true;
  return Math.abs(row.fluxRatio - 1) <= WITHIN + 1e-9;
}

function noDelta(set: PumpSet, why: string, { settings }: Context, compared: Compared): Finding {
  const { directAllowed } = set.supply;
  if (directAllowed === true)
    return needsWork(compared, `${why}: start it direct, which this supply allows.`, {
      id: 'rewire-starter',
      what: 'Rewire the starter for direct start, and set its overload in the line',
      hours: settings.hours['rewire-starter'],
    });
  return block(
    compared,
    `${why}: the star-delta starter cannot be used${directAllowed === null ? ', and direct start is not stated as allowed' : ''}.`,
  );
}
