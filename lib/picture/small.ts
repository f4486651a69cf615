import { inTurn, sharp } from './guarded';

/** Twice what a list shows, for screens that put two pixels where one was asked for. */
const LONGEST_SIDE_PX = 240;
const QUALITY = 70;

/** A kept photograph as small as a list shows it: some 10 kB where the whole has a hundred times that. */
export const small = (content: Uint8Array): Promise<Uint8Array<ArrayBuffer>> =>
  inTurn(async () => {
    const size = { width: LONGEST_SIDE_PX, height: LONGEST_SIDE_PX, fit: 'inside', withoutEnlargement: true } as const;
    return new Uint8Array(await sharp(content).resize(size).webp({ quality: QUALITY }).toBuffer());
  });
