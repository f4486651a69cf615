import { ipCodes } from './tables/ip-codes';

/** `less`: lower, or said unsuitable. `not-stated`: the mark says nothing on it either way. */
export type Cover = 'covers' | 'less' | 'not-stated';

export interface IpCover {
  solids: Cover;
  water: Cover;
}

/**
 * Does one IP code cover another, numeral by numeral (IEC 60529)? Codes are as the schema reads them: `IP55`, `IPX6`,
 * `IP69K`. X in `need` asks nothing. Water numerals of 7 and above do not include the jets; K (ISO 20653) is kept for
 * 4K and 6K, while 9K and 9 count as one.
 */
export function ipCovers(have: string, need: string): IpCover {
  const solids = SOLIDS[numeral(have, 2)]?.[numeral(need, 2)] ?? 'not-stated';
  const water = WATER[numeral(have, 3)]?.[numeral(need, 3)] ?? 'not-stated';
  return { solids, water: water === 'covers' && lacksK(have, need) ? 'not-stated' : water };
}

/** The water numeral of a code; null where the plate shows X. */
export function waterNumeralOf(ip: string): number | null {
  const n = numeral(ip, 3);
  return n === X ? null : n;
}

const X = 10;
const numeral = (ip: string, at: number) => {
  const n = ip.charCodeAt(at) - 48;
  return n >= 0 && n <= 9 ? n : X;
};

/** 4K and 6K are harder tests than 4 and 6; a higher numeral without K is not known to include them. */
function lacksK(have: string, need: string): boolean {
  return need.length === 5 && numeral(need, 3) !== 9 && have.length !== 5;
}

// Every answer is laid out once: the look-up is two indexings.
const SOLIDS = ipCodes.solids.map((row) => answers(row.n, row.includes, [], 6));
const WATER = ipCodes.water.map((row) => answers(row.n, row.includes, row.unsuitableFor, 9));
SOLIDS[X] = WATER[X] = [...Array.from({ length: X }, (): Cover => 'not-stated'), 'covers'];

function answers(n: number, includes: readonly number[], unsuitableFor: readonly number[], top: number): Cover[] {
  const row = Array.from({ length: top + 1 }, (_, need): Cover => {
    if (need === n || includes.includes(need)) return 'covers';
    if (need > n || unsuitableFor.includes(need)) return 'less';
    return 'not-stated';
  });
  row[X] = 'covers';
  return row;
}
