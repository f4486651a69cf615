import { written } from '@/app/paths';

/** What the phone shows, by the path after /pump, which is that of the page it stands for. */
export type View =
  | { view: 'home'; typed: string }
  | { view: 'set'; tag: string }
  | { view: 'candidates'; tag: string; from: string | null }
  | { view: 'candidate' | 'job' | 'swap'; tag: string; number: string }
  | { view: 'fault' | 'readings'; tag: string }
  | { view: 'motor'; number: string }
  | { view: 'label'; code: string }
  | { view: 'scan' }
  | { view: 'waiting' }
  | { view: 'elsewhere' };

/** Null: the page is not one that a phone carries. */
export function viewAt(pathname: string, search: string): View | null {
  const parts = pathname
    .replace(/^\/pump(?=\/|$)/, '')
    .split('/')
    .filter((part) => part !== '')
    .map(written);
  const [room, name = '', part, other] = parts;
  const query = new URLSearchParams(search);
  if (room === undefined || room === 'find') return { view: 'home', typed: query.get('q') ?? '' };
  if (room === 'sets' && name !== '') return setView(name, parts.length, part, other ?? '', query);
  if (parts.length === 2 && room === 'motors') return { view: 'motor', number: name };
  if (parts.length === 2 && room === 'l') return { view: 'label', code: name };
  if (parts.length === 1 && room === 'scan') return { view: 'scan' };
  if (parts.length === 1 && room === 'waiting') return { view: 'waiting' };
  return null;
}

function setView(
  tag: string,
  count: number,
  part: string | undefined,
  other: string,
  query: URLSearchParams,
): View | null {
  if (count === 2) return { view: 'set', tag };
  if (count === 3 && part === 'candidates') return { view: 'candidates', tag, from: query.get('from') };
  if (count === 3 && part === 'readings') return { view: 'readings', tag };
  // As it is called here, and in the register.
  if (count === 3 && (part === 'fault' || part === 'failed')) return { view: 'fault', tag };
  if (count !== 4) return null;
  switch (part) {
    case 'candidates':
      return { view: 'candidate', tag, number: other };
    case 'job':
      return { view: 'job', tag, number: other };
    case 'swap':
      return { view: 'swap', tag, number: other };
    default:
      return null;
  }
}
