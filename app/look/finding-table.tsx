import type { Finding, Grade } from '@/lib/matching/finding';
import { FindFrame } from './find-frame';
import { type FigureTexts, figuresOfFinding } from './finding-figures';
import { Glyph } from './glyph';
import { SectionHead } from './section-head';
import { CRITERION_WORDS, hoursText } from './words';

const WORST_FIRST: readonly Grade[] = ['block', 'check', 'work'];
/** So many that fit are shown; the others open. */
const FITS_SHOWN = 8;

/** What is to be done, worst first. Null when nothing is. */
export function FindingsToDo({ findings }: { findings: readonly Finding[] }) {
  const toDo = WORST_FIRST.flatMap((grade) => findings.filter((finding) => finding.grade === grade));
  return <Group title="To do" findings={toDo} hasCount />;
}

export function FindingsToKnow({ findings }: { findings: readonly Finding[] }) {
  return <Group title="Good to know" findings={findings.filter((finding) => finding.grade === 'note')} />;
}

export function FindingsThatFit({ findings }: { findings: readonly Finding[] }) {
  const fits = findings.filter((finding) => finding.grade === 'ok');
  if (fits.length === 0) return null;
  const rest = fits.slice(FITS_SHOWN);
  return (
    <>
      <Group title="Fits" findings={fits.slice(0, FITS_SHOWN)} aside={countWords(fits.length)} />
      {rest.length > 0 && (
        <details>
          <summary className="more">{rest.length} more that fit</summary>
          <FindingTable title="More that fit" findings={rest} />
        </details>
      )}
    </>
  );
}

function Group({
  title,
  findings,
  hasCount,
  aside,
}: {
  title: string;
  findings: readonly Finding[];
  hasCount?: true;
  aside?: string;
}) {
  if (findings.length === 0) return null;
  const beside = hasCount ? countWords(findings.length) : aside;
  return (
    <section>
      <SectionHead title={title} {...(beside !== undefined && { aside: beside })} />
      <FindingTable title={title} findings={findings} />
    </section>
  );
}

/** Have, need, difference; below each what it means, the clause, and the work or the reading with its time. */
export function FindingTable({ title, findings }: { title: string; findings: readonly Finding[] }) {
  return (
    <FindFrame title={title} first="question">
      {findings.map((finding) => (
        <FindingRows key={finding.criterion} finding={finding} />
      ))}
    </FindFrame>
  );
}

function FindingRows({ finding }: { finding: Finding }) {
  const texts = figuresOfFinding(finding);
  const isUrgent = WORST_FIRST.includes(finding.grade);
  return (
    <tbody className={isUrgent ? 'urgent' : undefined}>
      <tr>
        <th scope="row" colSpan={texts.isLong ? 4 : 1}>
          <span className="name">
            <Glyph grade={finding.grade} />
            <span>{CRITERION_WORDS[finding.criterion]}</span>
          </span>
        </th>
        {!texts.isLong && <Values texts={texts} />}
      </tr>
      {texts.isLong && <LongValues texts={texts} />}
      {(isUrgent || finding.grade === 'note') && (
        <tr>
          <td className="under" colSpan={4}>
            <p>{finding.says}</p>
            <p className="label">{finding.cite}</p>
          </td>
        </tr>
      )}
      {(finding.work !== null || finding.by !== null) && (
        <tr>
          <td colSpan={4}>
            <ToDo finding={finding} />
          </td>
        </tr>
      )}
    </tbody>
  );
}

function Values({ texts }: { texts: FigureTexts }) {
  return (
    <>
      <td className="figure">
        <Value text={texts.have} />
      </td>
      <td className="figure">
        <Value text={texts.need} />
      </td>
      <td className="figure difference">
        {texts.difference} {texts.hasUnit && <small>{texts.unit}</small>}
      </td>
    </>
  );
}

function LongValues({ texts }: { texts: FigureTexts }) {
  return (
    <tr>
      <td className="under values" colSpan={4}>
        <span>
          <span className="label">have</span> <Value text={texts.have} />
        </span>
        <span>
          <span className="label">need</span> <Value text={texts.need} />
        </span>
        {texts.difference !== '' && (
          <span>
            <span className="label">difference</span> {texts.difference} {texts.hasUnit && texts.unit}
          </span>
        )}
      </td>
    </tr>
  );
}

function Value({ text }: { text: string }) {
  if (text === '?') return <abbr title="not known">?</abbr>;
  if (text === '–') return <abbr title="not stated">–</abbr>;
  return <bdi>{text}</bdi>;
}

function ToDo({ finding: { work, by, reading } }: { finding: Finding }) {
  return (
    <>
      {work !== null && (
        <p className="do">
          <span>{work.what}</span>
          <span className="t">{hoursText(work.hours)}</span>
        </p>
      )}
      {reading !== null && (
        <p className="do">
          <span>{reading}</span>
        </p>
      )}
      {by === 'person' && (
        <p className="do">
          <span>A competent person decides this.</span>
        </p>
      )}
    </>
  );
}

const countWords = (count: number) => (count === 1 ? '1 finding' : `${count} findings`);
