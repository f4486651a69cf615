import type { LabelLine } from '@/lib/register/queries/label-lines';
import { Label } from './label';
import { onASheet, type Paper } from './papers';
import { qr } from './qr';

/** The labels on their sheets, in mm. The first of them stands at `start`, counted from 1. */
export function LabelSheets({
  lines,
  linkOf,
  paper,
  start,
  copies,
}: {
  lines: readonly LabelLine[];
  /** The whole address that a code holds. */
  linkOf: (code: string) => string;
  paper: Paper;
  start: number;
  copies: number;
}) {
  const drawn = lines.map((line) => ({ line, code: qr(linkOf(line.code)) }));
  const labels = drawn.flatMap((one) => Array.from({ length: copies }, () => one));
  const perSheet = onASheet(paper);
  const sheets = Array.from({ length: Math.ceil((start - 1 + labels.length) / perSheet) }, (_, sheet) => sheet);
  const { page } = paper;
  return (
    <section className="label-sheets" aria-label="Labels" {...REACHABLE}>
      {sheets.map((sheet) => (
        <ol
          key={sheet}
          className={`label-sheet ${page.name}`}
          data-theme="day"
          aria-label={`Sheet ${sheet + 1} of ${sheets.length}`}
          style={{ width: `${page.widthMm}mm`, height: `${page.heightMm}mm` }}
        >
          {Array.from({ length: perSheet }, (_, place) => {
            const label = labels[sheet * perSheet + place - (start - 1)];
            // biome-ignore lint/suspicious/noArrayIndexKey: a label is its place
            return label && <Label key={place} {...label} paper={paper} place={place} />;
          })}
        </ol>
      ))}
    </section>
  );
}

/** What scrolls must be reached by the keyboard, though it is nothing to press. */
const REACHABLE = { tabIndex: 0 };
