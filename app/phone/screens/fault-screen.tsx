import { useState } from 'react';
import { TitleBlock } from '@/app/look/title-block';
import { candidatesPath, setPath } from '@/app/paths';
import { OUTBOX_VERSION } from '@/lib/offline/outbox';
import { faultText, SEEN, SEEN_WORDS, type Seen } from '@/lib/plant/fault';
import { ask, tellChanged } from '../ask';
import type { Status } from '../asked';
import { go } from '../go';
import { PhoneSheet } from '../look/phone-sheet';
import { newKey } from '../new-key';
import { type Answer, useAsk } from '../use-ask';
import { NotHere } from './not-here';

/** "It has failed": what was seen, in one tap more, and on to the list. */
export function FaultScreen({ status, tag }: { status: Answer<Status>; tag: string }) {
  const answer = useAsk('set', { tag });
  const [key] = useState(newKey);
  const [words, setWords] = useState('');
  const [refused, setRefused] = useState<string | null>(null);
  const about = status.state === 'here' ? status.value.about : null;
  if (answer.state !== 'here' || about === null) return <PhoneSheet status={status}>{null}</PhoneSheet>;
  if (answer.value === null)
    return (
      <PhoneSheet status={status}>
        <NotHere what="set" name={tag} />
      </PhoneSheet>
    );
  const { set } = answer.value;
  const report = async (seen: Seen[]) => {
    const says = words.trim() === '' ? null : words.trim();
    const kept = await ask('keep', {
      waiting: {
        key,
        tag: set.tag,
        says: `Failed: ${faultText({ seen, says })}`,
        message: {
          version: OUTBOX_VERSION,
          kind: 'fault',
          key,
          userId: about.userId,
          siteId: about.siteId,
          body: { setId: set.id, seen, says, seenAt: new Date().toISOString() },
        },
      },
    });
    if (kept.outcome === 'refused') return setRefused(kept.says);
    tellChanged();
    go(candidatesPath(set.tag), { replace: true });
  };
  return (
    <PhoneSheet status={status} back={{ href: setPath(set.tag), words: set.tag }}>
      <TitleBlock small tag={set.tag} name="It has failed" cells={[]} />
      {refused !== null && (
        <p role="alert" className="problem-list">
          {refused}
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
      {words.trim() !== '' && (
        <div className="mt-3 grid">
          <button className="action" type="button" onClick={() => void report([])}>
            Report it in these words
          </button>
        </div>
      )}
    </PhoneSheet>
  );
}
