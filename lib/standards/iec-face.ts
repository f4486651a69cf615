import type { Face } from './dimension';
import type { IecFrameName } from './frame-text';
import type { Mounting } from './mounting-code';
import { citeOf, statusOf, weaker } from './table';
import { iecFlangeOfFrame } from './tables/iec-flange-of-frame';
import { iecFlanges } from './tables/iec-flanges';

const byFlange = new Map(iecFlanges.rows.map((row) => [row.flange, row]));
const byHeight = new Map(iecFlangeOfFrame.rows.map((row) => [row.height, row]));

const CLAUSE = 'IEC 60072-1 flanges';
const ASSIGNMENT = 'EN 50347 flange of the frame';

/** A flange by its name; null when there is none of that name. */
export function iecFlange(flange: string, optional = false): Face | null {
  const row = byFlange.get(flange);
  if (!row) return null;
  const texts = weaker(row.M[1], row.N[1]);
  const [hole] = row.S;
  return {
    name: flange,
    kind: row.kind,
    pitchCircleMm: row.M[0],
    spigotMm: row.N[0],
    outsideMm: row.P[0],
    holes: row.holes[0],
    hole: typeof hole === 'number' ? { throughMm: hole } : { thread: hole },
    shoulderToFaceMm: row.R[0],
    optional,
    status: statusOf(texts),
    cite: citeOf(CLAUSE, texts),
  };
}

/** The drive-end flange: the one written beside the frame, else the standard one of the mounting code's kind. */
export function iecFace(name: IecFrameName, mounting: Mounting | null): Face | null {
  const assigned = byHeight.get(name.height);
  const kind = mounting?.face === 'FF' || mounting?.face === 'FT' ? mounting.face : null;
  const standard = kind === 'FF' ? assigned?.FF : kind === 'FT' ? assigned?.FTStandard : undefined;
  if (name.flange !== null) {
    const usual = name.flange.startsWith('FF') ? assigned?.FF : assigned?.FTStandard;
    return iecFlange(name.flange, usual?.[0] !== name.flange);
  }
  if (kind === null) return null;
  const face = standard && iecFlange(standard[0]);
  if (!standard || !face)
    return unknownFlange(
      kind,
      `EN 50347 fixes no ${kind} flange for frame ${name.frame}: read its number on the plate or measure the bolt circle`,
    );
  const texts = weaker(standard[1], byFlange.get(standard[0])?.M[1] ?? 0);
  return { ...face, status: statusOf(texts), cite: `${citeOf(ASSIGNMENT, standard[1])}; ${face.cite}` };
}

/** A flange of which only the kind is known. */
export function unknownFlange(kind: 'FF' | 'FT', why: string): Face {
  return {
    name: kind,
    kind,
    pitchCircleMm: null,
    spigotMm: null,
    outsideMm: null,
    holes: null,
    hole: null,
    shoulderToFaceMm: null,
    optional: true,
    status: 'memory',
    cite: why,
  };
}
