import { undoHere } from '../changes/undo-here';

/** After a save: that it is saved, and the way to take it back. */
export function SavedNote({ query }: { query: Record<string, string | string[] | undefined> }) {
  const { changed, undone } = query;
  if (typeof undone === 'string')
    return (
      <p className="problem-list" role="status">
        {UNDONE[undone] ?? UNDONE.unknown}
      </p>
    );
  if (typeof changed !== 'string') return null;
  return (
    <form action={undoHere} className="problem-list saved-note" role="status">
      <p>Saved.</p>
      <input type="hidden" name="change" value={changed} />
      <button type="submit" className="inline-act">
        Undo this change
      </button>
    </form>
  );
}

const UNDONE: Record<string, string> = {
  done: 'Undone: everything stands as before.',
  since: 'Not undone: some of it was changed by somebody else since. The history tells by whom.',
  refused: 'Not undone: the register cannot stand so any more. The history tells what happened since.',
  unknown: 'Not undone: there is no such change.',
  role: 'Not undone: your role here does not allow it.',
};
