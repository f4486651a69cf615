import type { Face, FaceKind } from './dimension';
import { mmOfPrinted } from './dimension-of';
import type { NemaFrameName } from './frame-text';
import { nemaFootFrame } from './nema-foot-frame';
import { type Cell, citeOf, type Limits, statusOf, weaker } from './table';
import { type NemaFacesRow, nemaFaces } from './tables/nema-faces';

const byFrame = new Map(nemaFaces.rows.map((row) => [row.frame, row]));

const CLAUSES = {
  C: '4.4.4',
  CH: '4.4.4',
  D: '4.4.6',
  JM: 'Table 18-33',
  JP: 'Table 18-34',
  P: 'Part 18',
} as const satisfies Partial<Record<FaceKind, string>>;

/** The face row of a frame; null where the tables do not hold it. A jet-pump motor (J) has the C face of its number. */
export function nemaFaceRow(name: NemaFrameName): NemaFacesRow | null {
  const letters = name.isJetPump ? 'C' : name.face;
  if (letters === null) return null;
  const [number] = name.numbers;
  const short = name.isShort ? 'S' : '';
  const isPump = letters === 'JM' || letters === 'JP' || letters === 'VP';
  const written = name.generation === 'T' && !isPump ? 'T' : name.generation === 'U' && Number(number) > 215 ? 'U' : '';
  return byFrame.get(`${number}${written}${short}${letters}`) ?? null;
}

export const clauseOfFace = (row: NemaFacesRow): string =>
  row.shaft === 'hollow'
    ? 'NEMA MG 1-2016 Table 18-30'
    : row.shaft === 'solid-vertical'
      ? 'NEMA MG 1-2016 Table 18-28'
      : row.frame.includes('T') || row.kind === 'JM' || row.kind === 'JP' || /^\d\d[A-Z]/.test(row.frame)
        ? `NEMA MG 1-2016 ${CLAUSES[row.kind]}`
        : 'NEMA MG 1, superseded U series';

/**
 * The drive-end face a frame names, or null. Where the tables do not hold it the face is there with unknown figures.
 * A face on the far end (FC, FD) is not the drive face.
 */
export function nemaFace(name: NemaFrameName): Face | null {
  if (name.hasSpecialMounting || (name.face === null && !name.isJetPump)) return null;
  const row = nemaFaceRow(name);
  const kind = kindOf(name);
  if (row === null)
    return {
      name: name.frame,
      kind,
      pitchCircleMm: null,
      spigotMm: null,
      outsideMm: null,
      holes: null,
      hole: null,
      shoulderToFaceMm: null,
      optional: false,
      status: 'memory',
      cite: `no table read holds the face of ${name.frame}`,
    };
  // The two figures that decide whether it bolts on carry the status of the face.
  const texts = weaker(row.AJ[1], row.AK[1]);
  return {
    name: row.frame,
    kind,
    pitchCircleMm: mmOf(row.AJ),
    spigotMm: mmOf(row.AK),
    outsideMm: mmOf(row.BD),
    holes: row.holes?.[0] ?? null,
    hole: row.thread ? { thread: row.thread[0] } : row.clearance ? { throughMm: mmOfPrinted(row.clearance[0]) } : null,
    shoulderToFaceMm: shoulderToFaceMm(name, row),
    optional: false,
    status: statusOf(texts),
    cite: citeOf(clauseOfFace(row), texts),
  };
}

function kindOf(name: NemaFrameName): FaceKind {
  switch (name.face) {
    case null:
    case 'C':
      return 'C';
    case 'CH':
    case 'D':
    case 'JM':
    case 'JP':
      return name.face;
    case 'VP':
    case 'P':
    case 'PH':
    case 'HP':
    case 'HPH':
    case 'LP':
    case 'LPH':
      return 'P';
  }
}

const mmOf = (cell: Cell<number | Limits> | undefined): number | null => {
  if (cell === undefined) return null;
  const [printed] = cell;
  return mmOfPrinted(typeof printed === 'number' ? printed : printed[0]);
};

/** BC as printed; else N-W less AH; 0 on a D flange, whose face lies in the plane of the shoulder (MG 1 4.4.6, from memory). */
function shoulderToFaceMm(name: NemaFrameName, row: NemaFacesRow): number | null {
  if (row.BC) return mmOfPrinted(row.BC[0]);
  if (row.kind === 'D') return 0;
  // Pump shafts are measured from the face.
  if (row.kind === 'JM' || row.kind === 'JP' || row.kind === 'P') return 0;
  const foot = nemaFootFrame(name);
  const length = row.AH?.[0];
  return foot && typeof length === 'number' ? mmOfPrinted(foot.NW[0] - length) : null;
}
