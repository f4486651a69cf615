import { clockOf, hoursText } from './words';

export interface ChainItem {
  words: string;
  hours: number;
  kind: 'base' | 'work';
}

/** Under this share of the whole a part is too narrow for its words. */
const NARROW = 0.15;

/** The hours as a chain of dimensions, to scale: what every swap takes in ink, each work item in blue. */
export function HoursChain({ items }: { items: readonly ChainItem[] }) {
  const taken = items.filter((item) => item.hours > 0);
  const total = taken.reduce((sum, item) => sum + item.hours, 0);
  if (taken.length === 0) return null;
  if (taken.every((item) => item.hours / total >= NARROW)) return <Chain items={taken} hasWords />;
  return (
    <>
      <div aria-hidden="true">
        <Chain items={taken} hasWords={false} />
      </div>
      <ol className="chain-list" aria-label="Hours of work">
        {taken.map(({ words, hours }) => (
          <li key={words}>
            <span>{words}</span>
            <span className="dim nowrap">{hoursText(hours)}</span>
          </li>
        ))}
      </ol>
    </>
  );
}

function Chain({ items, hasWords }: { items: readonly ChainItem[]; hasWords: boolean }) {
  const total = items.reduce((sum, item) => sum + item.hours, 0);
  return (
    <ol className="chain" aria-label="Hours of work">
      {items.map(({ words, hours, kind }) => (
        <li key={words} className={kind === 'work' ? 'to-do' : undefined} style={{ flex: `${hours} 1 0` }}>
          <b>{hasWords || hours / total >= NARROW ? shortHours(hours) : ''}</b>
          {hasWords && <span>{words}</span>}
        </li>
      ))}
    </ol>
  );
}

function shortHours(hours: number): string {
  const { h, min } = clockOf(hours);
  return `${h}:${min}`;
}
