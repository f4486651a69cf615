import { prepareZXingModule, readBarcodes } from 'zxing-wasm/reader';
import type { FindCode } from './find-code';

/** The reader for browsers without one. Its file is fetched here, so that what is missing is told at once. */
export async function zxingReader(file: string): Promise<FindCode> {
  const answer = await fetch(file);
  if (!answer.ok) throw new Error(`${file}: ${answer.status}`);
  const wasmBinary = await answer.arrayBuffer();
  // Left to itself it would fetch its file from another host (S31).
  await prepareZXingModule({ overrides: { wasmBinary, locateFile: () => file }, fireImmediately: true });
  return async (canvas) => {
    const context = canvas.getContext('2d', { willReadFrequently: true });
    if (context === null) return [];
    const picture = context.getImageData(0, 0, canvas.width, canvas.height);
    const found = await readBarcodes(picture, { formats: ['QRCode'], tryHarder: true, maxNumberOfSymbols: 4 });
    return found.filter(({ isValid }) => isValid).map(({ text }) => text);
  };
}
