import { frameName } from '@/lib/standards/frame-name';
import { mountingCode } from '@/lib/standards/mounting-code';
import type { PartReading } from '../part-reading';
import { partOf, problemsAt } from '../part-reading';

/** "184TC", "100L-4 B35", "112M 28 FF215": the frame, and the mounting and poles where they stand with it. */
export function frame(text: string): PartReading {
  const read = frameName(text);
  if (!read.ok) {
    const { ok, problems } = problemsAt('frame', read.problems);
    const alone = mountingCode(text); // "FRAME IM 3001": the mounting holds, the frame is still asked for
    return alone.ok ? { ok: true, value: { mounting: alone.value.name }, doubts: problems } : { ok, problems };
  }
  const { name, mounting, poles } = read.value;
  const extras = name.system === 'IEC' ? [name.shaftMm, name.flange].filter((one) => one !== null) : [];
  const plain = [name.frame, ...extras].join(' ');
  // "NEMA 56" keeps its first word: 56 alone could be either.
  const stays = frameName(plain).ok || name.system === null ? plain : `${name.system} ${plain}`;
  return partOf({
    frame: stays,
    ...(mounting ? { mounting: mounting.name } : {}),
    ...(poles === null ? {} : { poles }),
  });
}
