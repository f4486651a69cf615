import type { Metadata } from 'next';
import { answered } from '@/app/answered';
import { FramesFound } from '@/app/frames/measure/frames-found';
import { MeasureForm } from '@/app/frames/measure/measure-form';
import { measuredAsked } from '@/app/frames/measure/measured-asked';
import { Sheet } from '@/app/look/sheet';
import { personOf, whoMay } from '@/app/who-is-here';
import { may } from '@/lib/auth/may';
import { ownUnits } from '@/lib/register/queries/own-units';
import { framesMeasured } from '@/lib/standards/measured/frames-measured';
import { tellApart, twinsOf } from '@/lib/standards/measured/tell-apart';
import { KnownSoFar } from './known-so-far';
import { SightFields } from './sight-fields';
import { sightAsked } from './told-by-sight';

export const metadata: Metadata = { title: 'A motor without a plate' };

/** What a motor is, found out step by step when its plate is gone. */
export default answered(async function NoPlatePage({ searchParams }: PageProps<'/motors/no-plate'>) {
  const query = await searchParams;
  const actor = await whoMay('frame.read', '/motors/no-plate');
  const units = await ownUnits(actor);
  const asked = measuredAsked(query, units);
  const sight = sightAsked(query);
  const found = framesMeasured(asked.measured, asked.face, asked.tool);
  const isTold = Object.keys(asked.measured).length > 0 || Object.keys(sight.typed).length > 0;
  const mayEnter = may(actor, 'motor.edit');
  return (
    <Sheet current="/motors" person={personOf(actor)} back={{ href: '/motors', words: 'Motors' }}>
      <h1 className="page">A motor without a plate</h1>
      <p className="mt-2">
        Look first for a plate under paint and grease, a number stamped in the frame or the shaft end, a sticker in the
        terminal box, and the paper of the pump. Then step by step; every step may be left out.
      </p>
      <div className="problem-list">
        <p>
          <b>Before hands go near it:</b> isolate, lock off and prove dead, second feeds too (heater, brake, control); a
          drive’s DC link needs its time. The terminal box is opened by a competent person, to local codes.
        </p>
      </div>
      {isTold && (
        <>
          <KnownSoFar asked={asked} sight={sight} fits={found.fits} mayEnter={mayEnter} />
          {Object.keys(asked.measured).length > 0 && (
            <FramesFound
              found={found}
              next={tellApart(found.fits, asked.measured, asked.tool)}
              twins={twinsOf(found.fits)}
              asked={asked}
              units={units}
              mayEnter={mayEnter}
            />
          )}
        </>
      )}
      <MeasureForm asked={asked} units={units} action="/motors/no-plate">
        <SightFields sight={sight} />
      </MeasureForm>
    </Sheet>
  );
});
