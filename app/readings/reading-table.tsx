import { FindFrame } from '@/app/look/find-frame';
import { figuresOfFinding } from '@/app/look/finding-figures';
import { Glyph } from '@/app/look/glyph';
import { ABOUT_WORDS, type ReadingFinding } from '@/lib/job/reading-finding';

/** What readings said: have, need, difference; below each what it means and where that comes from. */
export function ReadingTable({ title, findings }: { title: string; findings: readonly ReadingFinding[] }) {
  return (
    <FindFrame title={title} first="reading">
      {findings.map((finding) => (
        <Rows key={finding.about} finding={finding} />
      ))}
    </FindFrame>
  );
}

function Rows({ finding }: { finding: ReadingFinding }) {
  const { about, grade, says, cite } = finding;
  const { have, need, difference, unit, hasUnit } = figuresOfFinding(finding);
  return (
    <tbody className={grade === 'check' || grade === 'block' ? 'urgent' : undefined}>
      <tr>
        <th scope="row">
          <span className="name">
            <Glyph grade={grade} />
            <span>{ABOUT_WORDS[about]}</span>
          </span>
        </th>
        <td className="figure">{have}</td>
        <td className="figure">{need === '–' ? <abbr title="not known">?</abbr> : need}</td>
        <td className="figure difference">
          {difference} {hasUnit && <small>{unit}</small>}
        </td>
      </tr>
      <tr>
        <td className="under" colSpan={4}>
          <p>{says}</p>
          <p className="label">{cite}</p>
        </td>
      </tr>
    </tbody>
  );
}
