import type { Metadata } from 'next';
import Link from 'next/link';
import { answered } from '@/app/answered';
import { Sheet } from '@/app/look/sheet';
import { personOf, whoMay } from '@/app/who-is-here';
import { may } from '@/lib/auth/may';
import { ownUnits } from '@/lib/register/queries/own-units';
import { framesMeasured } from '@/lib/standards/measured/frames-measured';
import { tellApart, twinsOf } from '@/lib/standards/measured/tell-apart';
import { FramesFound } from './frames-found';
import { MeasureForm } from './measure-form';
import { measuredAsked } from './measured-asked';

export const metadata: Metadata = { title: 'Frame by a tape' };

/** Which frames a motor can be by what a tape tells of it. */
export default answered(async function MeasurePage({ searchParams }: PageProps<'/frames/measure'>) {
  const query = await searchParams;
  const actor = await whoMay('frame.read', '/frames/measure');
  const units = await ownUnits(actor);
  const asked = measuredAsked(query, units);
  const isMeasured = Object.keys(asked.measured).length > 0;
  const found = framesMeasured(asked.measured, asked.face, asked.tool);
  return (
    <Sheet current="/frames" person={personOf(actor)} back={{ href: '/frames', words: 'Frames' }}>
      <h1 className="page">Frame by a tape</h1>
      <p className="mt-2">
        Measure what you can reach; each reading leaves fewer frames. Bare figures are taken in{' '}
        {units === 'us' ? 'inches' : 'millimetres'}; “4 1/2 in” and “114 mm” are read as well.{' '}
        <Link className="to" href="/motors/no-plate">
          A motor without a plate
        </Link>
      </p>
      {isMeasured && (
        <FramesFound
          found={found}
          next={tellApart(found.fits, asked.measured, asked.tool)}
          twins={twinsOf(found.fits)}
          asked={asked}
          units={units}
          mayEnter={may(actor, 'motor.edit')}
        />
      )}
      <MeasureForm asked={asked} units={units} action="/frames/measure" />
    </Sheet>
  );
});
