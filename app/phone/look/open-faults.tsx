import { useState } from 'react';
import { SectionHead } from '@/app/look/section-head';
import { momentText } from '@/app/moment';
import type { PackFault, PackSet } from '@/lib/offline/pack';
import { RECORDED_HERE } from '@/lib/offline/with-waiting';
import { ageText } from '../age-text';
import { tellChanged } from '../ask';
import type { Status } from '../asked';
import { keepMessage } from '../keep-message';

/** The faults still open, each with how long it stands, and how it ends without a swap. */
export function OpenFaults({ set, status }: { set: PackSet; status: Status }) {
  const { about, now } = status;
  if (set.faults.length === 0 || about === null) return null;
  return (
    <section>
      <SectionHead title="Faults open" />
      <ul className="history">
        {set.faults.map((fault) => (
          <li key={fault.id}>
            <p className="label">
              {momentText(new Date(fault.at), about.site.timezone)}, <bdi>{fault.by}</bdi>, standing{' '}
              {ageText(fault.at, now)}
            </p>
            <p>
              <bdi>{fault.says}</bdi>
            </p>
            <RunsAgain set={set} fault={fault} about={about} />
          </li>
        ))}
      </ul>
    </section>
  );
}

function RunsAgain({ set, fault, about }: { set: PackSet; fault: PackFault; about: NonNullable<Status['about']> }) {
  const [how, setHow] = useState('');
  const [problem, setProblem] = useState<string | null>(null);
  const close = async () => {
    const words = how.trim();
    if (words === '') return setProblem('Say in a few words what was done.');
    const isWaiting = fault.by === RECORDED_HERE;
    const body = {
      faultId: isWaiting ? null : fault.id,
      faultKey: isWaiting ? fault.id : null,
      how: words,
      doneAt: new Date().toISOString(),
    };
    const kept = await keepMessage(about, { kind: 'fault-closed', tag: set.tag, says: `Runs again: ${words}`, body });
    if (kept.outcome === 'refused') return setProblem(kept.says);
    tellChanged();
  };
  return (
    <details>
      <summary className="more">It runs again</summary>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          void close();
        }}
      >
        <div className="field">
          <label htmlFor={`how-${fault.id}`}>What was done?</label>
          <input
            className="in"
            id={`how-${fault.id}`}
            value={how}
            maxLength={2_000}
            onChange={(event) => setHow(event.currentTarget.value)}
            aria-invalid={problem === null ? undefined : true}
            aria-describedby={problem === null ? undefined : `how-${fault.id}-wrong`}
          />
          {problem !== null && (
            <p className="wrong" id={`how-${fault.id}-wrong`}>
              {problem}
            </p>
          )}
        </div>
        <div className="mt-3 grid">
          <button className="second" type="submit">
            It runs, with the motor that is in it
          </button>
        </div>
      </form>
    </details>
  );
}
