import sharp from 'sharp';
import { describe, expect, test } from 'vitest';
import { reencoded } from '@/lib/picture/reencoded';
import { jpeg, photograph } from './made';

async function kept(bytes: Uint8Array) {
  const done = await reencoded(bytes);
  if (!done.ok) throw new Error(done.says);
  return done;
}
const pixelOf = async (content: Uint8Array, left: number, top: number) =>
  [...(await sharp(content).extract({ left, top, width: 1, height: 1 }).raw().toBuffer())].slice(0, 3);

/** Red at the left, blue at the right, as the sensor saw it. */
const twoHalves = () =>
  sharp({ create: { width: 400, height: 200, channels: 3, background: '#d02020' } }).composite([
    { input: { create: { width: 200, height: 200, channels: 3, background: '#2020d0' } }, left: 200, top: 0 },
  ]);

test('S16 nothing of where and when a picture was taken, or by which camera, is left in it', async () => {
  const xmp = '<x:xmpmeta xmlns:x="adobe:ns:meta/"><planted>XMP-WORDS</planted></x:xmpmeta>';
  const taken = await (await photograph())
    .jpeg()
    .withXmp(xmp)
    .withIccProfile('p3')
    .withExif({
      IFD0: { Make: 'CAMERA-WORDS', ImageDescription: 'PLACE-WORDS' },
      IFD2: { DateTimeOriginal: '2026:11:20 03:04:05' },
      IFD3: { GPSLatitude: '57/1 2/1 3/1', GPSLatitudeRef: 'N', GPSLongitude: '9/1 5/1 6/1', GPSLongitudeRef: 'E' },
    })
    .toBuffer();
  const before = await sharp(taken).metadata();
  for (const words of ['CAMERA-WORDS', 'PLACE-WORDS', '2026:11:20']) expect(taken.includes(words), words).toBe(true);
  expect(before.exif?.includes(Buffer.from([0x88, 0x25])) || before.exif?.includes(Buffer.from([0x25, 0x88]))).toBe(
    true,
  );
  expect(taken.includes('XMP-WORDS')).toBe(true);
  expect(before.icc).toBeDefined();

  const { content } = await kept(taken);
  const { exif, xmp: xmpLeft, icc, iptc, comments, orientation, format } = await sharp(content).metadata();
  expect({ exif, xmpLeft, icc, iptc, comments, orientation, format }).toEqual({ format: 'webp' });
  for (const words of ['WORDS', '2026:11', 'EXIF', 'XMP ', 'ICCP', 'Exif', 'GPS'])
    expect(Buffer.from(content).includes(words), words).toBe(false);
});

test('S16 words hidden in a PNG, or behind its end, do not come through', async () => {
  const hidden = await (await photograph())
    .png()
    .withExif({ IFD0: { Copyright: 'HIDDEN-WORDS' } })
    .toBuffer();
  const taken = Buffer.concat([hidden, Buffer.from('<script>HIDDEN-WORDS</script>')]);
  expect(taken.includes('HIDDEN-WORDS')).toBe(true);
  expect(Buffer.from((await kept(taken)).content).includes('HIDDEN')).toBe(false);
});

// Where the left edge of the sensor's picture ends (CIPA DC-008, orientation tag 274).
test.each([
  [1, 400, 200, [20, 100]],
  [3, 400, 200, [380, 100]],
  [6, 200, 400, [100, 20]],
  [8, 200, 400, [100, 380]],
  [2, 400, 200, [380, 100]],
] as const)('a picture of orientation %s is turned upright', async (orientation, widthPx, heightPx, [left, top]) => {
  const taken = await twoHalves().jpeg().withMetadata({ orientation }).toBuffer();
  const done = await kept(taken);
  expect(done).toMatchObject({ widthPx, heightPx, mediaType: 'image/webp' });
  const [red = 0, , blue = 0] = await pixelOf(done.content, left, top);
  expect(red).toBeGreaterThan(blue + 100);
});

test('the longest side is at most 2,400 px, and a small picture stays as large as it is', async () => {
  expect(await kept(await jpeg({ widthPx: 4_032, heightPx: 3_024 }))).toMatchObject({
    widthPx: 2_400,
    heightPx: 1_800,
  });
  expect(await kept(await jpeg({ widthPx: 1_000, heightPx: 4_000 }))).toMatchObject({ widthPx: 600, heightPx: 2_400 });
  expect(await kept(await jpeg({ widthPx: 300, heightPx: 200 }))).toMatchObject({ widthPx: 300, heightPx: 200 });
});

test('the largest that can come of it is under 10 MB, which is what the database takes', async () => {
  const noise = Buffer.from(Uint8Array.from({ length: 2_400 * 2_400 * 3 }, () => Math.random() * 256));
  const taken = await sharp(noise, { raw: { width: 2_400, height: 2_400, channels: 3 } })
    .jpeg({ quality: 90 })
    .toBuffer();
  expect((await kept(taken)).content.length).toBeLessThan(10 * 1024 * 1024);
});

test('strokes of four pixels in a picture of twelve million keep their edges', async () => {
  const [width, height] = [4_000, 3_000];
  const bars = Buffer.alloc(width * height);
  for (let at = 0; at < bars.length; at += 1) bars[at] = (at % width) % 8 < 4 ? 90 : 170;
  const taken = await sharp(bars, { raw: { width, height, channels: 1 } })
    .jpeg({ quality: 90 })
    .toBuffer();
  const { content } = await kept(taken);
  const row = await sharp(content).extract({ left: 600, top: 900, width: 400, height: 1 }).greyscale().raw().toBuffer();
  expect(Math.max(...row) - Math.min(...row)).toBeGreaterThan(50);
});

test('colours of a wider space come out as they look', async () => {
  const taken = await sharp({ create: { width: 100, height: 100, channels: 3, background: '#c83c28' } })
    .withIccProfile('p3')
    .jpeg({ quality: 100, chromaSubsampling: '4:4:4' })
    .toBuffer();
  const [red = 0, green = 0, blue = 0] = await pixelOf((await kept(taken)).content, 50, 50);
  for (const [is, was] of [
    [red, 0xc8],
    [green, 0x3c],
    [blue, 0x28],
  ] as const)
    expect(Math.abs(is - was)).toBeLessThan(8);
});

describe('JPEG, PNG and WebP are read', () => {
  test.each(['jpeg', 'png', 'webp'] as const)('%s', async (format) => {
    const done = await kept(await (await photograph()).toFormat(format).toBuffer());
    expect(done).toMatchObject({ mediaType: 'image/webp', widthPx: 640, heightPx: 480 });
    expect((await sharp(done.content).metadata()).format).toBe('webp');
  });

  test('what can be seen through stands on white', async () => {
    const taken = await sharp({ create: { width: 50, height: 50, channels: 4, background: '#0000' } })
      .png()
      .toBuffer();
    const { content } = await kept(taken);
    expect((await sharp(content).metadata()).hasAlpha).toBe(false);
    expect(await pixelOf(content, 25, 25)).toEqual([255, 255, 255]);
  });

  test('the same bytes give the same picture', async () => {
    const taken = await jpeg();
    const [one, two] = await Promise.all([kept(taken), kept(taken)]);
    expect(Buffer.compare(one.content, two.content)).toBe(0);
  });
});
