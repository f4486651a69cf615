import { momentText } from '../moment';

/**
 * What a printed list must say of itself, since what asked for it is left out on paper: the site, when it stood so, and
 * what it was asked for. `asked`: "area Bagging", null where it asks nothing; none: nothing can be asked.
 */
export function PrintedLine({
  site,
  timezone,
  asked,
}: {
  site: string;
  timezone: string;
  asked: readonly (string | null)[];
}) {
  const told = asked.filter((part) => part !== null);
  return (
    <p className="print-only label">
      <bdi>{site}</bdi>, as of {momentText(new Date(), timezone)}.
      {asked.length > 0 && (told.length === 0 ? ' All of them.' : ` Only: ${told.join('; ')}.`)}
    </p>
  );
}
