import { useState } from 'react';
import { Mark } from '@/app/look/mark';
import { Tag } from '@/app/look/tag';
import { TitleBlock } from '@/app/look/title-block';
import { candidatesPath } from '@/app/paths';
import { CandidateLines } from '@/app/sets/[tag]/candidates/candidate-lines';
import { CandidateSection } from '@/app/sets/[tag]/candidates/candidate-section';
import { SOURCES } from '@/app/sets/[tag]/candidates/sources';
import type { Source } from '@/lib/matching/offer/candidate';
import { clockText } from '../age-text';
import type { RankedHere, Status } from '../asked';
import { Asked } from '../look/asked';
import { type Answer, useAsk } from '../use-ask';
import { useIsDrawn } from '../use-is-drawn';
import { NotHere } from './not-here';

/** What can go in, ranked by the engine on this phone. */
export function CandidatesScreen({ status, tag, from }: { status: Answer<Status>; tag: string; from: string | null }) {
  const only = SOURCES.find((source) => source === from) ?? null;
  const answer = useAsk('ranked', { tag, whole: only });
  const about = status.state === 'here' ? status.value.about : null;
  const judged = about === null ? '' : `snapshot ${clockText(about.at, about.site.timezone)}`;
  return (
    <>
      {/* The day it was judged on stands in its head: a head that came in two parts would move the list. */}
      <Asked answer={about === null ? { state: 'asked' } : answer} nothing={<NotHere what="set" name={tag} />}>
        {(here) => <RankedSheet here={here} only={only} judged={judged} />}
      </Asked>
    </>
  );
}

function RankedSheet({ here, only, judged }: { here: RankedHere; only: Source | null; judged: string }) {
  const { tag, service, area, failed, sources, unsuitableCount, isCriticalityTold } = here;
  const isDrawn = useIsDrawn();
  const shown = SOURCES.filter((source) => only === null || only === source);
  const sections = isDrawn ? shown.map((source) => ({ source, ...sources[source] })) : onScreen(shown, sources);
  return (
    <>
      <TitleBlock
        small
        tag={tag}
        name={<bdi>{service ?? 'what it serves is not told'}</bdi>}
        cells={[
          { label: 'Goes out', value: failed === null ? 'no motor' : <Tag>{failed}</Tag> },
          { label: 'Area', value: <bdi>{area ?? 'not told'}</bdi> },
          { label: 'Judged on', value: judged },
        ]}
      />
      <h2 className="page">What can go in?</h2>
      {sections.map((section) => (
        <CandidateSection key={section.source} tag={tag} {...section} isCriticalityTold={isCriticalityTold} />
      ))}
      {isDrawn && only !== null && (
        <p className="pt-4">
          <a className="to" href={candidatesPath(tag)}>
            All that can go in
          </a>
        </p>
      )}
      {isDrawn && unsuitableCount > 0 && <Unsuitable tag={tag} count={unsuitableCount} />}
    </>
  );
}

/** px: what a row takes at least, and what stands above them. */
const [ROW, HEAD] = [240, 300];

/** The sources and rows that fill the screen: what is below them is drawn behind the first frame. */
function onScreen(shown: readonly Source[], sources: RankedHere['sources']) {
  let left = Math.ceil(Math.max(1, (window.innerHeight - HEAD) / ROW));
  return shown.flatMap((source) => {
    if (left <= 0) return [];
    const lines = sources[source].lines.slice(0, left);
    left -= Math.max(1, lines.length);
    return [{ source, ...sources[source], lines }];
  });
}

/** Judged when somebody opens it. */
function Unsuitable({ tag, count }: { tag: string; count: number }) {
  const [isOpen, setOpen] = useState(false);
  return (
    <details className="mt-6 border-rule border-y" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary className="more">
        <Mark verdict="unsuitable" size="middle" />
        <b>Unsuitable</b>
        <span className="label">{count}, with reasons</span>
      </summary>
      {isOpen && <Misses tag={tag} count={count} />}
    </details>
  );
}

function Misses({ tag, count }: { tag: string; count: number }) {
  const answer = useAsk('misses', { tag });
  if (answer.state !== 'here' || answer.value === null) return null;
  return (
    <>
      {answer.value.length < count && (
        <p className="label">The {answer.value.length} nearest misses of those looked at, fewest reasons first.</p>
      )}
      <CandidateLines tag={tag} lines={answer.value} />
    </>
  );
}
