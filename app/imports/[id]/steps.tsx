import type { OneImport } from '@/lib/register/queries/imports';
import { ActionButton } from '../../look/action';
import { figure } from '../counts-text';
import { steerHere } from './steer-here';

/** What may be said to the import as it stands. */
export function Steps({ run }: { run: OneImport }) {
  const { status, counts, changeId } = run;
  const toWrite = counts.new + counts.changed;
  const isHalf = changeId !== null && (status === 'cancelled' || status === 'failed');
  const isStoppable = ['reading', 'ready', 'checking', 'checked', 'applying'].includes(status);
  return (
    <div className="steps">
      {status === 'checked' && toWrite > 0 && (
        <Step
          run={run}
          step="apply"
          isMain
          words={`Write ${toWrite === 1 ? 'one row' : `${figure(toWrite)} rows`} into the register`}
        />
      )}
      {status === 'checked' && toWrite === 0 && <p>Nothing of it is new: there is nothing to write.</p>}
      {isHalf && counts.applied < toWrite && <Step run={run} step="resume" isMain words="Go on where it stopped" />}
      {(status === 'applied' || isHalf) && counts.applied > 0 && (
        <Step run={run} step="undo" words={`Take back all ${figure(counts.applied)} rows`} />
      )}
      {isStoppable && <Step run={run} step="cancel" words="Stop this import" />}
    </div>
  );
}

function Step({ run, step, words, isMain }: { run: OneImport; step: string; words: string; isMain?: true }) {
  return (
    <form action={steerHere}>
      <input type="hidden" name="run" value={run.runId} />
      <input type="hidden" name="step" value={step} />
      {isMain ? <ActionButton>{words}</ActionButton> : <ActionButton second>{words}</ActionButton>}
    </form>
  );
}
