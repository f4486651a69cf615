import type { Metadata } from 'next';
import { areas } from '@/lib/register/queries/areas';
import { ownUnits } from '@/lib/register/queries/own-units';
import { answered } from '../../answered';
import { Sheet } from '../../look/sheet';
import { asked } from '../../record/record-state';
import { personOf, whoMay } from '../../who-is-here';
import { SetForm } from '../set-form';

export const metadata: Metadata = { title: 'Enter a set' };

/** Enters a set; its motor is entered on its own and told that it is in this set. */
export default answered(async function NewSetPage() {
  const actor = await whoMay('set.edit', '/sets/new');
  const [units, places] = await Promise.all([ownUnits(actor), areas(actor)]);
  return (
    <Sheet wide person={personOf(actor)} back={{ href: '/sets', words: 'Sets' }}>
      <h1 className="page">Enter a set</h1>
      <SetForm
        first={asked({}, null)}
        units={units}
        recordId={null}
        areas={places.map(({ areaId, name }) => ({ value: areaId, words: name }))}
      />
    </Sheet>
  );
});
