import type { Query } from './asked-for';
import { type AskedName, notRead, type Read } from './not-read';

/** Said over a list whose address asks what is not there: what was typed, and what is shown in its place. */
export function NotReadNote({ query, read }: { query: Query; read: Readonly<Partial<Record<AskedName, Read>>> }) {
  return notRead(query, read).map(({ word, typed, shown }) => (
    <p key={word} className="pt-3">
      There is no {word} “<bdi>{typed}</bdi>”: {shown} is shown.
    </p>
  ));
}
