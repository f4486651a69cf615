import type { Metadata } from 'next';
import { answered } from '../answered';
import { Sheet } from '../look/sheet';
import { phoneFiles } from '../phone-files';
import { personOf, whoMay } from '../who-is-here';
import { ScanHere } from './scan-here';

export const metadata: Metadata = { title: 'Scan' };

/** From the label at the pump to its set or motor. */
export default answered(async function ScanPage() {
  const actor = await whoMay('register.read', '/scan');
  return (
    <Sheet person={personOf(actor)} back={{ href: '/', words: 'Register' }}>
      <h1 className="page">Scan a label</h1>
      <ScanHere readerPath={phoneFiles().zxing} />
    </Sheet>
  );
});
