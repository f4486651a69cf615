import zlib from 'node:zlib';
import sharp, { type Sharp } from 'sharp';
import { describe, expect, test } from 'vitest';
import { reencoded } from '@/lib/picture/reencoded';
import { slowness } from '../yardstick';
import { costOf, jpeg, photograph, png } from './made';

const svg = '<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"><script>alert(1)</script></svg>';
const bytes = (text: string) => new Uint8Array(Buffer.from(text, 'latin1'));

describe('S16 what is no photograph is refused by what it is, not by what it is called', () => {
  test.each([
    ['an SVG', svg, 'drawing'],
    ['an SVG after a declaration', `<?xml version="1.0"?>\n${svg}`, 'drawing'],
    ['an SVG after blanks and a byte order mark', `\xef\xbb\xbf \n\t${svg}`, 'drawing'],
    ['an SVG in UTF-16', Buffer.from(`\ufeff${svg}`, 'utf16le').toString('latin1'), 'drawing'],
    ['an HTML page', '<!doctype html><script>alert(1)</script>', 'drawing'],
    ['a PDF', '%PDF-1.7\n1 0 obj', 'document'],
    ['a GIF', 'GIF89a\x01\x00\x01\x00', 'gif'],
    ['plain words', 'Motor 5 hp 1750 rpm', 'kind'],
    ['a program', '\x7fELF\x02\x01\x01', 'kind'],
    ['a ZIP', 'PK\x03\x04', 'kind'],
    ['nothing', '', 'empty'],
    ['HTML behind the first bytes of a JPEG', '\xff\xd8\xff\xe0<script>alert(1)</script>', 'broken'],
    ['HTML behind the first bytes of a PNG', '\x89PNG\r\n\x1a\n<script>alert(1)</script>', 'broken'],
    ['an SVG behind the first bytes of a WebP', `RIFF\x00\x00\x00\x00WEBP${svg}`, 'broken'],
  ])('%s', async (_name, text, why) => {
    expect(await reencoded(bytes(text))).toEqual({ ok: false, why, says: expect.stringMatching(/^[A-Z].+\.$/) });
  });

  test('an AVIF, although the library could read it', async () => {
    const taken = await (await photograph({ widthPx: 64, heightPx: 64 })).avif({ effort: 0 }).toBuffer();
    expect(await reencoded(taken)).toMatchObject({ ok: false, why: 'heic' });
  });

  test('no other reader of the library can be reached at all', async () => {
    await expect(sharp(Buffer.from(svg)).metadata()).rejects.toThrow(/unsupported image format/);
    const tiff = await (await photograph({ widthPx: 8, heightPx: 8 })).tiff().toBuffer();
    await expect(sharp(tiff).metadata()).rejects.toThrow(/unsupported image format/);
    expect(await reencoded(tiff)).toMatchObject({ ok: false, why: 'kind' });
  });
});

describe('a picture that moves is refused', () => {
  test('WebP', async () => {
    const frames = await Promise.all([1, 2].map(async (seed) => (await photograph({ seed })).png().toBuffer()));
    const pages = await sharp(frames, { join: { animated: true } })
      .webp({ delay: [100, 100] })
      .toBuffer();
    expect((await sharp(pages).metadata()).pages, 'the test made it move').toBe(2);
    expect(await reencoded(pages)).toMatchObject({ ok: false, why: 'moving' });
  });

  test('PNG', async () => {
    const data = zlib.deflateSync(Buffer.alloc(9 * 8));
    const still = png({ widthPx: 8, heightPx: 8 }, ['IDAT', data]);
    expect(await reencoded(still)).toMatchObject({ ok: true });
    const moving = png({ widthPx: 8, heightPx: 8 }, ['acTL', Buffer.from([0, 0, 0, 2, 0, 0, 0, 0])], ['IDAT', data]);
    expect(await reencoded(moving)).toMatchObject({ ok: false, why: 'moving' });
  });
});

describe('S15 a picture that is not whole is refused', () => {
  test.each(['jpeg', 'png', 'webp'] as const)('%s', async (format) => {
    const whole = await (await photograph()).toFormat(format).toBuffer();
    for (const share of [0.9, 0.5, 0.1])
      expect(await reencoded(whole.subarray(0, whole.length * share)), String(share)).toMatchObject({
        ok: false,
        why: 'broken',
      });
    expect(await reencoded(whole.subarray(0, 14))).toMatchObject({ ok: false, why: 'broken' });
  });

  test('one with bytes turned over in the middle is refused or read, and nothing breaks', async () => {
    const whole = await jpeg();
    for (let at = 2; at < whole.length; at += Math.ceil(whole.length / 60)) {
      const spoilt = whole.slice();
      spoilt.fill(0xff, at, at + 12);
      const done = await reencoded(spoilt);
      expect(done.ok || done.why === 'broken' || done.why === 'pixels', String(at)).toBe(true);
    }
  });
});

describe('S15 bombs are refused in under a second and without growing memory by 150 MB', () => {
  const zeros = (length: number) => zlib.deflateSync(Buffer.alloc(length));

  /** A JPEG whose header claims other sizes. */
  const lying = async (widthPx: number, heightPx: number) => {
    const claimed = Buffer.from(await jpeg({ widthPx: 64, heightPx: 64 }));
    const at = claimed.indexOf(Buffer.from([0xff, 0xc0]));
    claimed.writeUInt16BE(heightPx, at + 5);
    claimed.writeUInt16BE(widthPx, at + 7);
    return claimed;
  };

  test.each([
    [
      'a PNG of 50 000 by 50 000 px, whole',
      () => png({ widthPx: 50_000, heightPx: 50_000, bits: 1 }, ['IDAT', zeros(6_251 * 50_000)]),
      'pixels',
    ],
    [
      'a PNG that claims four thousand million lines',
      () => png({ widthPx: 1, heightPx: 0x7fffffff }, ['IDAT', zeros(1_000)]),
      /pixels|broken/,
    ],
    ['a JPEG that claims 65 500 by 65 500 px', () => lying(65_500, 65_500), 'pixels'],
    ['a JPEG that claims two thousand times what it has', () => lying(3_200, 3_200), null],
    [
      'a PNG with 200 MB in its colour profile',
      () =>
        png(
          { widthPx: 8, heightPx: 8 },
          ['iCCP', Buffer.concat([Buffer.from('p\0\0'), zeros(2e8)])],
          ['IDAT', zeros(72)],
        ),
      null,
    ],
    [
      'a PNG with 200 MB of words',
      () =>
        png(
          { widthPx: 8, heightPx: 8 },
          ['zTXt', Buffer.concat([Buffer.from('p\0\0'), zeros(2e8)])],
          ['IDAT', zeros(72)],
        ),
      null,
    ],
    ['a PNG with 200 MB more than its lines', () => png({ widthPx: 8, heightPx: 8 }, ['IDAT', zeros(2e8)]), null],
  ] as const)('%s', async (_name, make, why) => {
    const bomb = await make();
    expect(bomb.length).toBeLessThan(1e6);
    const { result, mb, ms } = await costOf(() => reencoded(bomb));
    // What is small once its ballast is left out may be kept.
    if (why !== null) expect(result).toMatchObject({ ok: false, why: expect.stringMatching(why) });
    else if (result.ok) expect(result.content.length).toBeLessThan(20_000);
    // What else the machine does is counted with it: the least of three tells what it takes.
    if (ms > 1_000) {
      const again = async () => (await costOf(() => reencoded(bomb))).ms;
      expect(Math.min(await again(), await again())).toBeLessThan(1_000 * slowness());
    }
    expect(mb).toBeLessThan(150);
  });

  test.each([
    [
      'an interlaced PNG of 16 bits',
      3_500,
      (whole: Sharp) => whole.toColourspace('rgb16').png({ progressive: true, compressionLevel: 1 }),
    ],
    ['a progressive JPEG', 3_500, (whole: Sharp) => whole.jpeg({ progressive: true, chromaSubsampling: '4:4:4' })],
    ['a plain JPEG', 8_000, (whole: Sharp) => whole.jpeg({ chromaSubsampling: '4:4:4' })],
  ] as const)('the largest %s that is read takes less than that too', async (_name, side, make) => {
    const flat = sharp({ create: { width: side, height: side, channels: 3, background: '#5a783c' } });
    const largest = await make(flat).withMetadata({ orientation: 6 }).toBuffer();
    const { result, mb } = await costOf(() => reencoded(largest));
    expect(result).toMatchObject({ ok: true, widthPx: 2_400, heightPx: 2_400 });
    expect(mb).toBeLessThan(150);
  });

  test('a larger one of those is refused', async () => {
    const flat = sharp({ create: { width: 3_600, height: 3_600, channels: 3, background: '#5a783c' } });
    expect(await reencoded(await flat.png({ progressive: true, compressionLevel: 1 }).toBuffer())).toMatchObject({
      ok: false,
      why: 'pixels',
    });
  });

  test('four at once take no more than one', async () => {
    const taken = await jpeg({ widthPx: 4_000, heightPx: 3_000 });
    const { result, mb } = await costOf(() => Promise.all(Array.from({ length: 4 }, () => reencoded(taken))));
    expect(result.every(({ ok }) => ok)).toBe(true);
    expect(mb).toBeLessThan(150);
  });
});
