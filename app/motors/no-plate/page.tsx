import type { Metadata } from 'next';
import Link from 'next/link';
import { answered } from '@/app/answered';
import { FramesFound } from '@/app/frames/measure/frames-found';
import { isMeasured } from '@/app/frames/measure/measured-asked';
import { SectionHead } from '@/app/look/section-head';
import { Sheet } from '@/app/look/sheet';
import { setPath } from '@/app/paths';
import { personOf, whoMay } from '@/app/who-is-here';
import { may } from '@/lib/auth/may';
import { ownUnits } from '@/lib/register/queries/own-units';
import { framesMeasured } from '@/lib/standards/measured/frames-measured';
import { knownFields } from './known-fields';
import { KnownSoFar } from './known-so-far';
import { LeftSoFar } from './left-so-far';
import { StepForm } from './step-form';
import { indexOf, STEPS, stepOf } from './steps';
import { walkAsked } from './walk-asked';

export const metadata: Metadata = { title: 'A motor without a plate' };

/** What a motor is, found out step by step when its plate is gone; what was found stands in the address. */
export default answered(async function NoPlatePage({ searchParams }: PageProps<'/motors/no-plate'>) {
  const query = await searchParams;
  const actor = await whoMay('frame.read', '/motors/no-plate');
  const asked = walkAsked(query, await ownUnits(actor));
  const step = stepOf(query.step);
  const { measured, seen, tool } = asked.tape;
  const { fits } = framesMeasured(measured, seen, tool);
  const mayEnter = may(actor, 'motor.edit');
  const isEnd = step === 'found';
  const back =
    asked.set === null ? { href: '/motors', words: 'Motors' } : { href: setPath(asked.set), words: asked.set };
  return (
    <Sheet current="/motors" person={personOf(actor)} back={back}>
      <h1 className="page">A motor without a plate</h1>
      {!isEnd && (
        <SectionHead
          title={STEPS[indexOf(step)]?.title}
          aside={`step ${indexOf(step) + 1} of ${STEPS.length - 1}, each may be left out`}
        />
      )}
      {isEnd ? (
        <>
          <KnownSoFar asked={asked} fits={fits} mayEnter={mayEnter} />
          {isMeasured(asked.tape) && <FramesFound asked={asked.tape} mayEnter={mayEnter} more={knownFields(asked)} />}
        </>
      ) : (
        <>
          <StepForm step={step} asked={asked} />
          {isMeasured(asked.tape) && <LeftSoFar fits={fits} />}
        </>
      )}
      <nav aria-label="Steps" className="screen-only">
        <SectionHead title="Steps" />
        <ol className="walk-steps">
          {STEPS.map(({ id, title }) => (
            <li key={id}>
              <Link
                className="to"
                aria-current={id === step ? 'step' : undefined}
                href={`/motors/no-plate?${new URLSearchParams([...asked.carried, ['step', id]])}`}
              >
                {title}
              </Link>
            </li>
          ))}
        </ol>
      </nav>
    </Sheet>
  );
});
