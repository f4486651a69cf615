import type { Metadata, Viewport } from 'next';
import { MOTOR_FIELDS } from '@/lib/fields/motor-fields';
import { shownIn, type Typed } from '@/lib/fields/read-form';
import { stateOf } from '@/lib/fields/state';
import { readPlate } from '@/lib/nameplate/read-plate';
import { ownUnits } from '@/lib/register/queries/own-units';
import { shelves } from '@/lib/register/queries/shelves';
import { answered } from '../../answered';
import { Sheet } from '../../look/sheet';
import { asked } from '../../record/record-state';
import { personOf, whoMay } from '../../who-is-here';
import { MotorForm } from '../motor-form';
import { NoPlateLinks } from '../no-plate-links';
import { PlatePasteForm } from '../plate-paste';
import { shelfChoices } from '../shelf-choices';
import { ToldNote } from '../told-note';
import { toldOf } from '../told-of';

export const metadata: Metadata = { title: 'Enter a motor' };
// What is typed is read off the picture above it: both stay in sight over a phone's keyboard.
export const viewport: Viewport = { interactiveWidget: 'resizes-content' };

/** Enters a motor: from its plate pasted whole, from what a tape told, or field by field. */
export default answered(async function NewMotorPage({ searchParams }: PageProps<'/motors/new'>) {
  const actor = await whoMay('motor.edit', '/motors/new');
  const [units, places, query] = await Promise.all([ownUnits(actor), shelves(actor), searchParams]);
  const plate = typeof query.plate === 'string' ? query.plate : '';
  const read = plate === '' ? null : readPlate(plate);
  const told = toldOf(query);
  const typed: Typed = {
    ...(read &&
      shownIn(MOTOR_FIELDS, stateOf({ ...read.motor, unread: read.unread.join('\n') || null }), units, {
        hasRatings: true,
      })),
    ...told,
  };
  return (
    <Sheet wide person={personOf(actor)} back={{ href: '/motors', words: 'Motors' }}>
      <h1 className="page">Enter a motor</h1>
      <ToldNote told={told} />
      <NoPlateLinks />
      <PlatePasteForm />
      <MotorForm
        first={asked(typed, null)}
        units={units}
        recordId={null}
        shelves={shelfChoices(places)}
        kept={[]}
        paste={{ plate, problems: read?.problems ?? [], unread: read?.unread ?? [] }}
      />
    </Sheet>
  );
});
