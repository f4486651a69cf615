import { Glyph } from '@/app/look/glyph';
import type { ReadingFinding } from '@/lib/job/reading-finding';

/** What the reading just typed says, told to those who cannot see it too. */
export function SaidNow({ findings }: { findings: readonly ReadingFinding[] }) {
  return (
    <div role="status">
      {findings.map(({ about, grade, says, cite }) => (
        <p key={about} className={grade === 'ok' || grade === 'note' ? 'said' : 'said urgent'}>
          <Glyph grade={grade} />
          <span>
            {says}
            <span className="label block">{cite}</span>
          </span>
        </p>
      ))}
    </div>
  );
}
