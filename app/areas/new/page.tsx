import type { Metadata } from 'next';
import { ownUnits } from '@/lib/register/queries/own-units';
import { answered } from '../../answered';
import { Sheet } from '../../look/sheet';
import { asked } from '../../record/record-state';
import { personOf, whoMay } from '../../who-is-here';
import { AreaForm } from '../area-form';

export const metadata: Metadata = { title: 'Enter an area' };

export default answered(async function NewAreaPage() {
  const actor = await whoMay('set.edit', '/areas/new');
  return (
    <Sheet person={personOf(actor)} back={{ href: '/areas', words: 'Areas' }}>
      <h1 className="page">Enter an area</h1>
      <AreaForm first={asked({}, null)} units={await ownUnits(actor)} recordId={null} />
    </Sheet>
  );
});
