import type { NemaFrameName } from './frame-text';
import { nemaPattern, seriesOf } from './nema-number';
import type { Cell } from './table';
import { type NemaFootFramesRow, nemaFootFrames } from './tables/nema-foot-frames';

const byFrame = new Map(nemaFootFrames.rows.map((row) => [row.frame, row]));

/** The row of a frame's feet and shaft; null where the table does not list the frame with that shaft. */
export function nemaFootFrame(name: NemaFrameName): NemaFootFramesRow | null {
  const [number] = name.numbers;
  const { generation, isShort, hasLongBase } = name;
  const letters = generation === 'T' ? 'T' : generation === 'U' && Number(number) > 215 ? 'U' : hasLongBase ? 'H' : '';
  const row = byFrame.get(`${number}${letters}${isShort ? 'S' : ''}`);
  if (row) return row;
  // 324S and 326S are the short shafts of the U series and are written without the U.
  const bare = isShort ? byFrame.get(`${number}S`) : undefined;
  return bare && (generation === 'U' || generation === 'original') ? bare : null;
}

/** The foot pattern of one number: T, U and original frames of equal number share it, and the series fixes all but 2F. */
export interface NemaFeet {
  D: Cell;
  /** Half the spacing across. */
  E: Cell | null;
  twoF: Cell;
  H: Cell | null;
}

export function nemaFeet(number: number, name: NemaFrameName): NemaFeet | null {
  const own =
    nemaFootFrame({ ...name, numbers: [number] }) ?? nemaFootFrame({ ...name, numbers: [number], isShort: false });
  if (own) return own;
  const pattern = nemaPattern(number);
  if (pattern === null) return null;
  const series = seriesOf(number);
  const sisters = nemaFootFrames.rows.filter((one) => seriesOf(Number.parseInt(one.frame, 10)) === series);
  const sister = sisters.find((one) => one.generation === name.generation) ?? sisters[0];
  return { ...pattern, E: sister?.E ?? null, H: sister?.H ?? null };
}
