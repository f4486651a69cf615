import { Tag } from '../look/tag';
import type { Paper } from './papers';

/** Smaller squares than these, printed at 300 dots an inch, a phone's camera often misses: common practice, no source. */
export const LEAST_MODULE_MM = 0.5;

/** What a person must know before they print: the address that the codes hold, and how to print to size. */
export function WhereTheyLead({ base, paper, modules }: { base: string; paper: Paper; modules: number }) {
  const { host, hostname } = new URL(base);
  const isHereOnly = /^(localhost|127\.|\[::1\])/.test(hostname);
  const moduleMm = paper.codeMm / modules;
  return (
    <div className="screen-only">
      <p className="mt-4">
        The codes lead to <Tag>{host}</Tag>. Print at 100 %, without margins, and hold the first sheet against the
        labels.
      </p>
      {isHereOnly && (
        <p className="problem-list" role="alert">
          No phone reaches that address. Open this page by the address that phones use, or set BEDPLATE_URL, before
          labels are printed. Read in Bedplate’s own Scan page, and typed, the codes hold anywhere.
        </p>
      )}
      {moduleMm < LEAST_MODULE_MM && (
        <p className="problem-list" role="alert">
          The address is long: on this paper the squares of a code are {moduleMm.toFixed(2)} mm, and may not be read.
          Choose a larger label.
        </p>
      )}
    </div>
  );
}
