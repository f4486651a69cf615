import type { Metadata } from 'next';
import { answerStatus } from '@/app/answer-status';
import { answered } from '@/app/answered';
import { DimensionTable, FaceFacts } from '@/app/dimension-table';
import { MountDrawing } from '@/app/look/mount-drawing';
import { SectionHead } from '@/app/look/section-head';
import { Sheet } from '@/app/look/sheet';
import { factsAlone } from '@/app/motor-drawing';
import { framePath, oneLine, written } from '@/app/paths';
import { personOf, whoMay } from '@/app/who-is-here';
import { mountOfMotor } from '@/lib/drawing/mount';
import type { Problem } from '@/lib/plant/reading';
import { readFrame } from '@/lib/standards/dimensions-of';
import { frameAnswer } from '@/lib/standards/frame-answer';
import { FrameForm } from '../frame-form';

type Props = PageProps<'/frames/[frame]'>;

export const generateMetadata = async ({ params }: Props): Promise<Metadata> => ({
  title: `Frame ${written((await params).frame)}`,
});

export default answered(async function FramePage({ params, searchParams }: Props) {
  const asked = await searchParams;
  const frame = written((await params).frame);
  const mounting = typeof asked.mounting === 'string' ? oneLine(asked.mounting).slice(0, 40) : '';
  const poles = typeof asked.poles === 'string' ? oneLine(asked.poles).slice(0, 4) : '';
  const actor = await whoMay('frame.read', framePath(frame));
  const options = { mounting: mounting === '' ? null : mounting, poles: poles === '' ? null : Number(poles) };
  const answer = frameAnswer(frame, options);
  const fit = readFrame(frame, options);
  const form = <FrameForm frame={frame.slice(0, 40)} mounting={mounting} poles={poles} />;
  if (!answer.ok || !fit.ok) {
    answerStatus(404);
    return (
      <Sheet wide current="/frames" person={personOf(actor)}>
        <h1 className="page">Not understood</h1>
        <NotUnderstood problems={answer.ok ? [] : answer.problems} />
        {form}
      </Sheet>
    );
  }
  const { value } = answer;
  const mount = mountOfMotor(value.frame, fit.value);
  const hasDimensions = Object.keys(value.dimensions).length > 0;
  return (
    <Sheet wide current="/frames" person={personOf(actor)}>
      <h1 className="page">
        {hasDimensions ? 'Frame' : 'Face'} <bdi>{value.frame}</bdi>
      </h1>
      <p className="mt-2">
        {value.system === null ? 'Of no system known here' : `${value.system} frame`}
        {mounting !== '' && (
          <>
            , <bdi>{mounting}</bdi>
          </>
        )}
        {poles !== '' && `, ${poles} poles`}. What a suffix leaves open is not known from the frame: measure it.
      </p>
      <div className="cols">
        <div>
          {hasDimensions && (
            <>
              <SectionHead title="Dimensions" />
              <DimensionTable dimensions={value.dimensions} />
            </>
          )}
          {value.face !== null && <FaceFacts face={value.face} />}
        </div>
        <div>
          <MountDrawing incoming={mount} outgoing={null} facts={factsAlone(mount)} />
          <SectionHead title="Another frame" />
          {form}
        </div>
      </div>
    </Sheet>
  );
});

function NotUnderstood({ problems }: { problems: readonly Problem[] }) {
  return (
    <ul className="problem-list">
      {problems.map(({ path, value, says }) => (
        <li key={`${path} ${says}`}>
          {path}
          {value !== null && (
            <>
              {' '}
              <bdi>“{value}”</bdi>
            </>
          )}{' '}
          {says}
        </li>
      ))}
    </ul>
  );
}
