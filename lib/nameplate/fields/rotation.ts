import { type PartReading, partOf, problemAt } from '../part-reading';

/** Which way the shaft turns. A plate that does not say from which end is read as it stands only where the end does not matter. */
export function rotation(text: string): PartReading {
  const bare = text.trim().toUpperCase();
  if (/^(?:EITHER|BOTH|REV(?:ERSIBLE)?\.?|BI-?DIRECTIONAL|CW ?\/ ?CCW|CCW ?\/ ?CW)/.test(bare))
    return partOf({ rotation: 'either' });
  const way = /^(?:CCW|COUNTER-? ?CLOCKWISE|ANTI-? ?CLOCKWISE)/.test(bare)
    ? 'ccw'
    : /^(?:CW|CLOCKWISE)/.test(bare)
      ? 'cw'
      : null;
  if (way === null) return problemAt('rotation', text, 'is not a rotation: CW, CCW or EITHER');
  if (/(?:FROM|AT|FACING)? ?(?:\bDE\b|DRIVE END|SHAFT END|FACING SHAFT)/.test(bare) && !/OPP|NDE|ODE|NON/.test(bare))
    return partOf({ rotation: way });
  return problemAt('rotation', text, 'could be seen from the drive end or from the other end: say which');
}
