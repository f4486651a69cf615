import { useState } from 'react';
import { TitleBlock } from '@/app/look/title-block';
import { candidatesPath } from '@/app/paths';
import type { PackSet } from '@/lib/offline/pack';
import { faultText, SEEN, SEEN_WORDS, type Seen } from '@/lib/plant/fault';
import { tellChanged } from '../ask';
import type { Status } from '../asked';
import { go } from '../go';
import { keepMessage } from '../keep-message';
import { Asked } from '../look/asked';
import { newKey } from '../new-key';
import { smallPhoto } from '../small-photo';
import { type Answer, useAsk } from '../use-ask';
import { NotHere } from './not-here';

/** "It has failed": what was seen, in one tap more, and on to the list. */
export function FaultScreen({ status, tag }: { status: Answer<Status>; tag: string }) {
  const answer = useAsk('set', { tag });
  const about = status.state === 'here' ? status.value.about : null;
  return (
    <Asked answer={answer} nothing={<NotHere what="set" name={tag} />}>
      {({ set }) => (about === null ? null : <FaultSheet set={set} about={about} />)}
    </Asked>
  );
}

function FaultSheet({ set, about }: { set: PackSet; about: NonNullable<Status['about']> }) {
  const [key] = useState(newKey);
  const [words, setWords] = useState('');
  const [photo, setPhoto] = useState<string | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const choose = async (file: File | undefined) => {
    const made = file === undefined ? null : await smallPhoto(file);
    setPhoto(made);
    setProblem(file !== undefined && made === null ? 'This is no picture that the phone can show.' : null);
  };
  const report = async (seen: Seen[]) => {
    const says = words.trim() === '' ? null : words.trim();
    const told = { setId: set.id, seen, says, seenAt: new Date().toISOString() };
    const text = `Failed: ${faultText({ seen, says })}`;
    const kept = await keepMessage(about, { kind: 'fault', tag: set.tag, says: text, body: told, key });
    if (kept.outcome === 'refused') return setProblem(kept.says);
    if (photo !== null) {
      const body = { faultKey: key, caption: null, base64: photo };
      const pictured = await keepMessage(about, { kind: 'picture', tag: set.tag, says: 'Its photograph', body });
      if (pictured.outcome === 'refused')
        return setProblem(`The fault is kept, its photograph is not. ${pictured.says}`);
    }
    tellChanged();
    go(candidatesPath(set.tag), { replace: true });
  };
  return (
    <>
      <TitleBlock small tag={set.tag} name="It has failed" cells={[]} />
      {set.faults.length > 0 && <p className="pt-3">A fault is open here already: this tells another.</p>}
      {problem !== null && (
        <p role="alert" className="problem-list">
          {problem}
        </p>
      )}
      <h2 className="page">What was seen?</h2>
      <p className="pt-2 label">One tap reports it and opens the list of what can go in.</p>
      <div className="mt-4 grid gap-2">
        {SEEN.map((seen) => (
          <button key={seen} className="second" type="button" onClick={() => void report([seen])}>
            {SEEN_WORDS[seen]}
          </button>
        ))}
      </div>
      <p className="pt-6 label">
        With words or a photograph, if there is time: fill these first, then tap what was seen.
      </p>
      <div className="field">
        <label htmlFor="says">
          In your own words<span className="label"> (may stay empty)</span>
        </label>
        <textarea
          className="in"
          id="says"
          rows={2}
          maxLength={2_000}
          value={words}
          onChange={(event) => setWords(event.currentTarget.value)}
        />
      </div>
      <div className="field">
        <label htmlFor="photo">
          A photograph<span className="label"> (may stay empty)</span>
        </label>
        <input
          className="in"
          id="photo"
          type="file"
          accept="image/*"
          capture="environment"
          onChange={(event) => void choose(event.currentTarget.files?.[0])}
        />
        {photo !== null && <p className="hint label">It goes up with the fault.</p>}
      </div>
      {words.trim() !== '' && (
        <div className="mt-3 grid">
          <button className="action" type="button" onClick={() => void report([])}>
            Report it in these words
          </button>
        </div>
      )}
    </>
  );
}
