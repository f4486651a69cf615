import type { Metadata } from 'next';
import Link from 'next/link';
import { type ImportLine, imports } from '@/lib/register/queries/imports';
import { siteSettings } from '@/lib/register/queries/site-settings';
import { answered } from '../answered';
import { ActionButton } from '../look/action';
import { Choice } from '../look/choice';
import { SectionHead } from '../look/section-head';
import { Sheet } from '../look/sheet';
import { momentText } from '../moment';
import { personOf, whoMay } from '../who-is-here';
import { countsText } from './counts-text';
import { KIND_WORDS, STATUS_WORDS, saidBy } from './import-words';

export const metadata: Metadata = { title: 'Import' };

/** Lists of nameplates on their way into the register. */
export default answered(async function ImportsPage({ searchParams }: PageProps<'/imports'>) {
  const { said } = await searchParams;
  const actor = await whoMay('import.run', '/imports');
  const [runs, { timezone }] = await Promise.all([imports(actor), siteSettings(actor)]);
  return (
    <Sheet person={personOf(actor)} current="/desk" back={{ href: '/desk', words: 'Desk' }}>
      <h1 className="page">Import</h1>
      <p className="mt-2">
        A list as CSV or XLSX, up to 25 MB and 50 000 rows. Its columns are found and you confirm them; then every row
        is shown with what it would change. Nothing is written before you say so, and all of it can be undone.
      </p>
      {saidBy(said) !== null && (
        <p className="problem-list" role="alert">
          {saidBy(said)}
        </p>
      )}
      <form action="/imports/file" method="post" encType="multipart/form-data">
        <Choice
          legend="What its rows are"
          name="kind"
          kind="one"
          chosen={['sets']}
          options={[
            { value: 'sets', words: KIND_WORDS.sets, aside: 'one row a set' },
            { value: 'motors', words: KIND_WORDS.motors, aside: 'at repair and on order too' },
          ]}
        />
        <div className="field">
          <label htmlFor="file">File</label>
          <input className="in" type="file" id="file" name="file" required accept=".csv,.txt,.tsv,.xlsx" />
          <p className="hint label">An export of sets or motors is such a file, and shows the columns there are.</p>
        </div>
        <div className="mt-3 grid">
          <ActionButton>Read the file</ActionButton>
        </div>
      </form>
      <SectionHead title="Imports of this site" aside={runs.length === 0 ? undefined : runs.length} />
      {runs.length === 0 && <p className="pt-3">None yet.</p>}
      <ul className="lines">
        {runs.map((run) => (
          <RunLine key={run.runId} run={run} timezone={timezone} />
        ))}
      </ul>
    </Sheet>
  );
});

function RunLine({ run, timezone }: { run: ImportLine; timezone: string }) {
  return (
    <li>
      <span className="line-name">
        <Link href={`/imports/${run.runId}`}>
          <bdi>{run.fileName}</bdi>
        </Link>
      </span>
      <span className="line-aside">{STATUS_WORDS[run.status]}</span>
      <span className="line-below">
        {KIND_WORDS[run.kind]}, {countsText(run.counts)}; <bdi>{run.by}</bdi>, {momentText(run.at, timezone)}
      </span>
    </li>
  );
}
