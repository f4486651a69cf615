import { Mark } from '@/app/look/mark';
import { Tag } from '@/app/look/tag';
import { TitleBlock } from '@/app/look/title-block';
import { candidatesPath, setPath } from '@/app/paths';
import { CandidateLines } from '@/app/sets/[tag]/candidates/candidate-lines';
import { CandidateSection, SOURCES } from '@/app/sets/[tag]/candidates/candidate-section';
import { clockText } from '../age-text';
import type { RankedHere, Status } from '../asked';
import { Asked } from '../look/asked';
import { PhoneSheet } from '../look/phone-sheet';
import { type Answer, useAsk } from '../use-ask';
import { NotHere } from './not-here';

/** What can go in, ranked by the engine on this phone. */
export function CandidatesScreen({ status, tag, from }: { status: Answer<Status>; tag: string; from: string | null }) {
  const answer = useAsk('ranked', { tag });
  const about = status.state === 'here' ? status.value.about : null;
  const judged = about === null ? '' : `snapshot ${clockText(about.at, about.site.timezone)}`;
  return (
    <PhoneSheet status={status} back={{ href: setPath(tag), words: tag }}>
      <Asked answer={answer} nothing={<NotHere what="set" name={tag} />}>
        {(here) => <RankedSheet here={here} from={from} judged={judged} />}
      </Asked>
    </PhoneSheet>
  );
}

function RankedSheet({
  here: { set, failed, ranked },
  from,
  judged,
}: {
  here: RankedHere;
  from: string | null;
  judged: string;
}) {
  const only = SOURCES.find((source) => source === from) ?? null;
  return (
    <>
      <TitleBlock
        small
        tag={set.tag}
        name={<bdi>{set.service ?? 'what it serves is not told'}</bdi>}
        cells={[
          { label: 'Goes out', value: failed === null ? 'no motor' : <Tag>{failed.id}</Tag> },
          { label: 'Area', value: <bdi>{set.area ?? 'not told'}</bdi> },
          { label: 'Judged on', value: judged },
        ]}
      />
      <h2 className="page">What can go in?</h2>
      {SOURCES.filter((source) => only === null || only === source).map((source) => (
        <CandidateSection
          key={source}
          tag={set.tag}
          source={source}
          fits={ranked.fits[source]}
          asked={ranked.asked[source]}
          isWhole={only === source}
          nearest={ranked.unsuitable.find(({ candidate }) => candidate.from === source) ?? null}
          isCriticalityTold={set.criticality !== null}
        />
      ))}
      {only !== null && (
        <p className="pt-4">
          <a className="to" href={candidatesPath(set.tag)}>
            All that can go in
          </a>
        </p>
      )}
      {ranked.unsuitableCount > 0 && (
        <details className="mt-6 border-rule border-y">
          <summary className="more">
            <Mark verdict="unsuitable" size="middle" />
            <b>Unsuitable</b>
            <span className="label">{ranked.unsuitableCount}, with reasons</span>
          </summary>
          <CandidateLines tag={set.tag} judged={ranked.unsuitable} />
        </details>
      )}
    </>
  );
}
