import { Scanner } from '@/app/scan/scanner';
import { labelPath } from '@/lib/plant/label-code';
import { zxingPath } from '../files';
import { go } from '../go';

/** A label, read by the camera, from a photograph, or typed. */
export function ScanScreen() {
  return (
    <>
      <h1 className="page">Scan a label</h1>
      <Scanner readerPath={zxingPath} onCode={(code) => go(labelPath(code))} />
    </>
  );
}
