import type { PartReading } from '../part-reading';
import { frame } from './frame';

/** "D132S", a maker's type that ends in an IEC frame: read where nothing else names the frame, and said. */
export function frameInType(text: string): PartReading {
  const read = frame(text);
  if (!read.ok) return read;
  const says = `names no frame; it ends in frame ${read.value.frame} and is read so: see whether the feet and the shaft agree`;
  return { ...read, doubts: [{ path: 'frame', value: text, says }] };
}
