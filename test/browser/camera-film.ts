import fs from 'node:fs';
import sharp from 'sharp';

const [WIDTH, HEIGHT] = [640, 480];

/** A film of one still for Chromium's fake camera (YUV4MPEG2, grey), with the picture in its middle. */
export async function film(picture: Buffer, file: string): Promise<void> {
  const grey = await sharp(picture)
    .resize({ height: 300 })
    .flatten({ background: '#fff' })
    .extend({ background: '#888', ...around(await sizeAt(picture, 300)) })
    .greyscale()
    .raw()
    .toBuffer();
  const colour = Buffer.alloc((WIDTH * HEIGHT) / 2, 128);
  const frame = Buffer.concat([Buffer.from('FRAME\n'), grey.subarray(0, WIDTH * HEIGHT), colour]);
  const head = Buffer.from(`YUV4MPEG2 W${WIDTH} H${HEIGHT} F10:1 Ip A1:1 C420jpeg\n`);
  fs.writeFileSync(file, Buffer.concat([head, ...Array.from({ length: 10 }, () => frame)]));
}

async function sizeAt(picture: Buffer, height: number) {
  const { info } = await sharp(picture).resize({ height }).toBuffer({ resolveWithObject: true });
  return info;
}

function around({ width, height }: { width: number; height: number }) {
  const [left, top] = [Math.floor((WIDTH - width) / 2), Math.floor((HEIGHT - height) / 2)];
  return { left, top, right: WIDTH - width - left, bottom: HEIGHT - height - top };
}

/** A photograph as a hand takes it: askew, a little blurred, dim, on a grey ground. */
export const photo = (picture: Buffer): Promise<Buffer> =>
  sharp(picture)
    .resize({ height: 420 })
    .flatten({ background: '#fff' })
    .extend({ top: 400, bottom: 300, left: 500, right: 200, background: '#777' })
    .rotate(17, { background: '#777' })
    .blur(1.2)
    .modulate({ brightness: 0.7 })
    .jpeg({ quality: 70 })
    .toBuffer();
