import { SectionHead } from '@/app/look/section-head';
import { momentText } from '@/app/moment';
import type { Waiting } from '../asked';

/** What was recorded here and the register does not have yet. */
export function WaitingLines({ waiting, timezone }: { waiting: readonly Waiting[]; timezone: string }) {
  if (waiting.length === 0) return null;
  return (
    <section>
      <SectionHead title="Recorded on this phone" aside="the register does not have it yet" />
      <ul className="history">
        {waiting.map(({ key, says, at, state, told }) => (
          <li key={key}>
            <p className="label">{momentText(new Date(at), timezone)}, by this phone’s clock</p>
            <p>
              <bdi>{says}</bdi>
            </p>
            <p>
              {state === 'waiting' ? 'Waits for the network.' : <b>{told}</b>}{' '}
              <a className="to" href="/waiting">
                See it
              </a>
            </p>
          </li>
        ))}
      </ul>
    </section>
  );
}
