import type { Metadata } from 'next';
import Link from 'next/link';
import { isAtWork, type RunColumns, type RunStatus } from '@/lib/register/import/run';
import { importRows, ROW_OUTCOMES } from '@/lib/register/queries/import-rows';
import { importById, type OneImport } from '@/lib/register/queries/imports';
import { siteSettings } from '@/lib/register/queries/site-settings';
import { answerStatus } from '../../answer-status';
import { answered } from '../../answered';
import { pageAsked } from '../../lists/asked-for';
import { Empty } from '../../look/empty';
import { SectionHead } from '../../look/section-head';
import { Sheet } from '../../look/sheet';
import { momentText } from '../../moment';
import { personOf, whoMay } from '../../who-is-here';
import { figure } from '../counts-text';
import { KIND_WORDS, STATUS_WORDS, saidBy } from '../import-words';
import { ColumnsForm } from './columns-form';
import { Outcomes } from './outcomes';
import { KeepsUp } from './progress';
import { RowTable } from './row-table';
import { fieldChoices, shownColumns, unitChoices } from './shown-columns';
import { Steps } from './steps';
import { WrittenHow } from './written-how';

export const metadata: Metadata = { title: 'Import' };

const PER_PAGE = 100;
const BACK = { href: '/imports', words: 'Import' };

/** One file on its way into the register: what was found, what it would do, and how far it is. */
export default answered(async function ImportPage({ params, searchParams }: PageProps<'/imports/[id]'>) {
  const { id } = await params;
  const query = await searchParams;
  const actor = await whoMay('import.run', `/imports/${encodeURIComponent(id)}`);
  const run = await importById(actor, id);
  if (run === null) {
    answerStatus(404);
    return (
      <Sheet person={personOf(actor)} current="/desk" back={BACK}>
        <Empty title="There is no such import" says="Not at this site." isWholePage />
      </Sheet>
    );
  }
  const shown = ROW_OUTCOMES.find((outcome) => outcome === query.show) ?? null;
  const page = pageAsked(query);
  const hasRows = !['uploaded', 'reading', 'ready'].includes(run.status) && run.counts.done > 0;
  const [{ timezone }, { rows, all }] = await Promise.all([
    siteSettings(actor),
    hasRows ? importRows(actor, run.runId, shown, { page, perPage: PER_PAGE }) : NO_ROWS,
  ]);
  const path = `/imports/${run.runId}`;
  const said = saidBy(query.said);
  return (
    <Sheet wide person={personOf(actor)} current="/desk" back={BACK}>
      <h1 className="page">
        <bdi>{run.fileName}</bdi>
      </h1>
      <p className="mt-2 label">
        {KIND_WORDS[run.kind]}; <bdi>{run.by}</bdi>, {momentText(run.at, timezone)}
      </p>
      {said !== null && (
        <p className="problem-list" role="alert">
          {said}
        </p>
      )}
      <State run={run} timezone={timezone} />
      <Steps run={run} />
      {hasRows && (
        <>
          <SectionHead title="Rows" />
          <Outcomes path={path} counts={run.counts} shown={shown} />
          {run.counts.refused > 0 && (
            <p className="below-table">
              <span>
                Refused rows come back as a file with why, to be mended and imported again:{' '}
                <a className="to" href={`${path}/refused`}>
                  CSV
                </a>{' '}
                <a className="to" href={`${path}/refused?format=xlsx`}>
                  XLSX
                </a>
              </span>
            </p>
          )}
          {rows.length === 0 ? <p className="pt-3">No row is so.</p> : <RowTable rows={rows} kind={run.kind} />}
          <Pages path={path} show={shown} page={page} all={all} />
        </>
      )}
      {(run.status === 'ready' || run.status === 'checked') && run.columns !== null && (
        <>
          <SectionHead title="Which column is what" aside={`${run.columns.columns.length} columns`} />
          {run.columns.problems.map(({ says }) => (
            <p key={says} className="pt-3">
              {says}
            </p>
          ))}
          {run.status === 'ready' ? (
            <Columns run={run} columns={run.columns} />
          ) : (
            <details className="views">
              <summary className="to">A column is something else</summary>
              <Columns run={run} columns={run.columns} />
            </details>
          )}
        </>
      )}
      {run.dialect.format !== undefined && (
        <WrittenHow
          runId={run.runId}
          dialect={run.dialect}
          mayChange={run.changeId === null && RE_READ.includes(run.status)}
        />
      )}
    </Sheet>
  );
});

function Columns({ run, columns }: { run: OneImport; columns: RunColumns }) {
  const { options, makePlaces } = columns;
  return (
    <ColumnsForm
      runId={run.runId}
      kind={run.kind}
      columns={shownColumns(columns)}
      fields={fieldChoices(run.kind)}
      units={unitChoices(run.kind)}
      told={{
        mounting: options.mounting ?? '',
        area: options.area ?? '',
        store: options.store ?? '',
        makePlaces,
        keepUnknownWords: options.keepUnknownWords === true,
      }}
    />
  );
}

const RE_READ: readonly RunStatus[] = ['ready', 'checked', 'failed', 'cancelled'];
const NO_ROWS = { rows: [], all: 0 };

/** What it waits for, or how far it is; and what it says of itself. */
function State({ run, timezone }: { run: OneImport; timezone: string }) {
  const { status, counts, says, before, appliedAt } = run;
  const isBusy = isAtWork(status);
  const isCounted = status === 'checking' || status === 'applying';
  const done = status === 'applying' ? counts.applied : counts.done;
  const most = status === 'applying' ? counts.new + counts.changed : counts.rows;
  return (
    <div className="mt-3" role="status">
      <p>
        <b>{STATUS_WORDS[status]}</b>
        {isCounted && ` – ${figure(done)} of ${figure(most)} rows`}
        {status === 'reading' && ` – ${figure(counts.rows)} rows so far`}
        {status === 'applied' && appliedAt !== null && ` since ${momentText(appliedAt, timezone)}`}
      </p>
      {isCounted && <progress className="far" value={done} max={Math.max(most, 1)} aria-label="How far it is" />}
      {isBusy && (
        <>
          <p className="label">This page may be left: it goes on.</p>
          <KeepsUp />
        </>
      )}
      {says !== null && <p className="problem-list">{says}</p>}
      {before !== null && status !== 'applied' && (
        <p className="pt-2">
          The same file is in the register since {momentText(before.at, timezone)}:{' '}
          <Link className="to" href={`/imports/${before.runId}`}>
            that import
          </Link>
        </p>
      )}
    </div>
  );
}

function Pages({ path, show, page, all }: { path: string; show: string | null; page: number; all: number }) {
  if (all <= PER_PAGE) return null;
  const to = (other: number, words: string) => (
    <Link className="to" href={`${path}?${new URLSearchParams({ ...(show && { show }), page: String(other) })}`}>
      {words}
    </Link>
  );
  return (
    <p className="below-table label">
      <span>
        Rows {figure((page - 1) * PER_PAGE + 1)} to {figure(Math.min(page * PER_PAGE, all))} of {figure(all)}
      </span>
      <span>
        {page > 1 && to(page - 1, `Previous ${PER_PAGE}`)} {page * PER_PAGE < all && to(page + 1, `Next ${PER_PAGE}`)}
      </span>
    </p>
  );
}
