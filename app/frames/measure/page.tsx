import type { Metadata } from 'next';
import Link from 'next/link';
import { answered } from '@/app/answered';
import { Sheet } from '@/app/look/sheet';
import { personOf, whoMay } from '@/app/who-is-here';
import { may } from '@/lib/auth/may';
import { ownUnits } from '@/lib/register/queries/own-units';
import { FramesFound } from './frames-found';
import { MeasureForm } from './measure-form';
import { isMeasured, measuredAsked } from './measured-asked';

export const metadata: Metadata = { title: 'Frame by a tape' };

/** Which frames a motor can be by what a tape tells of it. */
export default answered(async function MeasurePage({ searchParams }: PageProps<'/frames/measure'>) {
  const query = await searchParams;
  const actor = await whoMay('frame.read', '/frames/measure');
  const asked = measuredAsked(query, await ownUnits(actor));
  return (
    <Sheet wide current="/frames" person={personOf(actor)} back={{ href: '/frames', words: 'Frames' }}>
      <h1 className="page">Frame by a tape</h1>
      <p className="mt-2">
        Measure what you can reach: each reading leaves fewer frames. Bare figures are taken in{' '}
        {asked.units === 'us' ? 'inches' : 'millimetres'}; “4 1/2 in” and “114 mm” are read as well.
      </p>
      <p className="pt-3">
        <Link className="to" href="/motors/no-plate">
          No plate at all? Step by step
        </Link>
      </p>
      <div className={isMeasured(asked) ? 'cols' : ''}>
        {isMeasured(asked) && <FramesFound asked={asked} mayEnter={may(actor, 'motor.edit')} />}
        <MeasureForm asked={asked} />
      </div>
    </Sheet>
  );
});
