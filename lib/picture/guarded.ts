import sharp from 'sharp';

// Pictures are rare: memory is worth more than their speed.
sharp.cache(false);
sharp.concurrency(1);
// No reader but these three is reached, whatever the bytes claim to be.
sharp.block({ operation: ['VipsForeignLoad'] });
sharp.unblock({
  operation: ['VipsForeignLoadJpegBuffer', 'VipsForeignLoadPngBuffer', 'VipsForeignLoadWebpBuffer'],
});

export { sharp };

/** One picture at a time, so that ten people with a camera take no more memory than one. */
let last: Promise<unknown> = Promise.resolve();
export function inTurn<T>(work: () => Promise<T>): Promise<T> {
  const mine = last.then(work);
  last = mine.catch(() => null);
  return mine;
}
