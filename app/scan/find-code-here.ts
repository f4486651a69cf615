import type { FindCode } from './find-code';

/** The browser's own reader, where it has one that knows QR codes (not yet in TypeScript's own types). */
interface OwnReader {
  detect(canvas: HTMLCanvasElement): Promise<{ rawValue: string }[]>;
}
interface OwnReaders {
  new (options: { formats: string[] }): OwnReader;
  getSupportedFormats(): Promise<string[]>;
}

/**
 * How QR codes are found here: by the browser, else by a reader of our own, whose file this server has at `readerPath`
 * and which is fetched when it is needed. Rejects when that could not be fetched.
 */
export async function findCodeHere(readerPath: string): Promise<FindCode> {
  const own = await ownReader();
  const ours = async () => (await import('./zxing-reader')).zxingReader(readerPath);
  if (own === null) return ours();
  let find: FindCode = async (canvas) => (await own.detect(canvas)).map(({ rawValue }) => rawValue);
  return async (canvas) => {
    try {
      return await find(canvas);
    } catch {
      find = await ours(); // some browsers name the reader and have no service behind it
      return find(canvas);
    }
  };
}

async function ownReader(): Promise<OwnReader | null> {
  const Readers = (globalThis as { BarcodeDetector?: OwnReaders }).BarcodeDetector;
  if (Readers === undefined) return null;
  try {
    const formats = await Readers.getSupportedFormats();
    return formats.includes('qr_code') ? new Readers({ formats: ['qr_code'] }) : null;
  } catch {
    return null;
  }
}
