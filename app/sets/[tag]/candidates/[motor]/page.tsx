import type { Metadata } from 'next';
import { answered } from '@/app/answered';
import { FindingsThatFit, FindingsToDo, FindingsToKnow } from '@/app/look/finding-table';
import { HoursChain } from '@/app/look/hours-chain';
import { MountDrawing } from '@/app/look/mount-drawing';
import { Sheet } from '@/app/look/sheet';
import { Tag } from '@/app/look/tag';
import { TitleBlock } from '@/app/look/title-block';
import { VerdictLine } from '@/app/look/verdict-line';
import { momentText, today } from '@/app/moment';
import { candidatePath, candidatesPath, written } from '@/app/paths';
import { personOf, whoMay } from '@/app/who-is-here';
import { must } from '@/lib/auth/may';
import { jobOf } from '@/lib/job/job';
import { judgeAlone } from '@/lib/matching/offer/judge-alone';
import { candidateFor } from '@/lib/register/candidate-for';
import { setByTag } from '@/lib/register/queries/set-by-tag';
import { siteSettings } from '@/lib/register/queries/site-settings';
import { unknownSet } from '../../../unknown-set';
import { CautionList } from '../../caution-list';
import { unknownCandidate } from '../../unknown-candidate';
import { chainOf, workItems } from '../../work-items';
import { Where } from '../candidate-lines';
import { CandidateActions } from './candidate-actions';
import { comparison } from './comparison';
import { PointFigures } from './point-figures';

type Props = PageProps<'/sets/[tag]/candidates/[motor]'>;

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  const { tag, motor } = await params;
  return { title: `${written(motor)} for ${written(tag)}` };
}

export default answered(async function CandidatePage({ params }: Props) {
  const asked = await params;
  const [tag, id] = [written(asked.tag), written(asked.motor)];
  const actor = await whoMay('set.assess', candidatePath(tag, id));
  must(actor, 'set.assess');
  const [known, { settings, timezone }] = await Promise.all([setByTag(actor, tag), siteSettings(actor)]);
  if (known === null) return unknownSet(actor, tag);
  const here = await candidateFor(actor, known, id);
  if (here === null) return unknownCandidate(actor, known.row.tag, id);
  const { row, set } = known;
  const { candidate, unoffered } = here;
  const { motor } = candidate;
  const asOf = today(timezone);
  const result = judgeAlone(candidate, known.set, settings, asOf);
  const isUnsuitable = result.verdict === 'unsuitable';
  return (
    <Sheet wide person={personOf(actor)} back={{ href: candidatesPath(row.tag), words: 'What can go in' }}>
      <TitleBlock
        small
        tag={motor.id}
        name={
          <>
            for <Tag>{row.tag}</Tag>
            {row.service !== null && (
              <>
                , <bdi>{row.service}</bdi>
              </>
            )}
          </>
        }
        cells={[
          { label: 'Where', value: <Where candidate={candidate} /> },
          { label: 'Goes out', value: set.failed === null ? 'no motor' : <Tag>{set.failed.id}</Tag> },
          { label: 'Judged', value: momentText(new Date(), timezone) },
        ]}
      />
      <div className="cols areas">
        <div className="a">
          <VerdictLine verdict={result.verdict} hours={isUnsuitable ? null : result.hours} />
          {result.why.startsWith('Not offered') && <p>{result.why}</p>}
          {!isUnsuitable && <HoursChain items={chainOf(workItems(result, motor, settings, asOf), settings)} />}
          <FindingsToDo findings={result.findings} />
        </div>
        <div className="d">
          <MountDrawing {...comparison(set, motor, result.findings)} />
        </div>
        <div className="b">
          <PointFigures point={result.operatingPoint} />
          <FindingsToKnow findings={result.findings} />
          <FindingsThatFit findings={result.findings} />
          {!isUnsuitable && <CautionList steps={jobOf(set, motor, result.findings, { settings, asOf }).steps} />}
        </div>
      </div>
      <CandidateActions tag={row.tag} candidate={candidate} verdict={result.verdict} unoffered={unoffered} />
    </Sheet>
  );
});
