import { useEffect } from 'react';
import { Action } from '@/app/look/action';
import { ActionBar } from '@/app/look/action-bar';
import { motorPath, setPath } from '@/app/paths';
import { go } from '../go';
import { useAsk } from '../use-ask';

/** From a label to what it is of. */
export function LabelScreen({ code }: { code: string }) {
  const answer = useAsk('label', { code: code.replaceAll('-', '').toUpperCase() });
  const found = answer.state === 'here' ? answer.value : null;
  useEffect(() => {
    if (found !== null) go(found.thing === 'set' ? setPath(found.name) : motorPath(found.name), { replace: true });
  }, [found]);
  return (
    <>
      {answer.state === 'here' && found === null && (
        <>
          <h1 className="page">
            No label <bdi>{code}</bdi> on this phone
          </h1>
          <p className="pt-3">It is of another site, or was entered since the snapshot was taken.</p>
          <ActionBar>
            <Action href="/scan">Scan again</Action>
          </ActionBar>
        </>
      )}
    </>
  );
}
