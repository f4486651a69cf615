import zlib from 'node:zlib';
import sharp, { type Sharp } from 'sharp';

/** A photograph of its own for every `seed`: coloured noise over a slope, so that no two are alike. */
export async function photograph({ widthPx = 640, heightPx = 480, seed = 1 } = {}): Promise<Sharp> {
  const pixels = Buffer.alloc(widthPx * heightPx * 3);
  let noise = seed;
  for (let at = 0; at < pixels.length; at += 1) {
    noise = (noise * 1_103_515_245 + 12_345) & 0x7fffffff;
    pixels[at] = ((at / pixels.length) * 200 + (noise >> 25)) & 255;
  }
  return sharp(pixels, { raw: { width: widthPx, height: heightPx, channels: 3 } });
}

export const jpeg = async (more: Parameters<typeof photograph>[0] = {}) =>
  new Uint8Array(await (await photograph(more)).jpeg().toBuffer());

/** A PNG written by hand: sharp would make none that lies. */
export function png(
  header: { widthPx: number; heightPx: number; bits?: number },
  ...chunks: [string, Buffer][]
): Buffer {
  const ihdr = Buffer.alloc(13);
  ihdr.writeUInt32BE(header.widthPx, 0);
  ihdr.writeUInt32BE(header.heightPx, 4);
  ihdr[8] = header.bits ?? 8; // grey, not interlaced
  const all: [string, Buffer][] = [['IHDR', ihdr], ...chunks, ['IEND', Buffer.alloc(0)]];
  return Buffer.concat([
    Buffer.from('\x89PNG\r\n\x1a\n', 'latin1'),
    ...all.flatMap(([name, data]) => {
      const body = Buffer.concat([Buffer.from(name, 'latin1'), data]);
      const [length, sum] = [Buffer.alloc(4), Buffer.alloc(4)];
      length.writeUInt32BE(data.length);
      sum.writeUInt32BE(zlib.crc32(body));
      return [length, body, sum];
    }),
  ]);
}

/** The most that the process grew while the work was done, in MB, and how long it took. */
export async function costOf<T>(work: () => Promise<T>): Promise<{ result: T; mb: number; ms: number }> {
  const before = process.memoryUsage.rss();
  let most = before;
  const look = setInterval(() => {
    most = Math.max(most, process.memoryUsage.rss());
  }, 2);
  const start = performance.now();
  const result = await work().finally(() => clearInterval(look));
  const ms = performance.now() - start;
  return { result, mb: (Math.max(most, process.memoryUsage.rss()) - before) / 1e6, ms };
}
