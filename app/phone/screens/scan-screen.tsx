import { Scanner } from '@/app/scan/scanner';
import { labelPath } from '@/lib/plant/label-code';
import type { Status } from '../asked';
import { zxingPath } from '../files';
import { go } from '../go';
import { PhoneSheet } from '../look/phone-sheet';
import type { Answer } from '../use-ask';

/** A label, read by the camera, from a photograph, or typed. */
export function ScanScreen({ status }: { status: Answer<Status> }) {
  return (
    <PhoneSheet status={status} back={{ href: '/pump', words: 'Find' }}>
      <h1 className="page">Scan a label</h1>
      <Scanner readerPath={zxingPath} onCode={(code) => go(labelPath(code))} />
    </PhoneSheet>
  );
}
