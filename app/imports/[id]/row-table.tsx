import Link from 'next/link';
import type { ImportKind } from '@/lib/import/field';
import { fieldOf } from '@/lib/import/fields';
import type { ImportRowLine } from '@/lib/register/queries/import-rows';
import { DataTable } from '../../look/data-table';
import { motorPath, setPath } from '../../paths';
import { OUTCOME_WORDS } from '../import-words';

/** Rows of the dry run: what each would change, from what to what, or why it is refused. */
export function RowTable({ rows, kind }: { rows: readonly ImportRowLine[]; kind: ImportKind }) {
  return (
    <DataTable name="Rows">
      <thead>
        <tr>
          <th scope="col" className="num">
            Line
          </th>
          <th scope="col">{kind === 'sets' ? 'Tag' : 'Number'}</th>
          <th scope="col">It is</th>
          <th scope="col">What it tells</th>
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <Row key={row.line} row={row} kind={kind} />
        ))}
      </tbody>
    </DataTable>
  );
}

function Row({ row, kind }: { row: ImportRowLine; kind: ImportKind }) {
  const labelOf = (field: string) => fieldOf(kind, field)?.label ?? field;
  const news = row.changes.filter(({ from, to }) => from === null && to !== null);
  const others = row.changes.filter((change) => !news.includes(change));
  return (
    <tr>
      <td className="num">{row.line}</td>
      <td className="id">
        <Key row={row} kind={kind} />
      </td>
      <td>{OUTCOME_WORDS[row.outcome]}</td>
      <td>
        <ul className="told">
          {news.length > 0 && (
            <li>
              <bdi>{news.map(({ field, to }) => `${labelOf(field)} ${to}`).join(' · ')}</bdi>
            </li>
          )}
          {others.map(({ field, from, to }) => (
            <li key={field}>
              {labelOf(field)}: {from !== null && <Was text={from} />}
              <bdi>{to ?? 'not told any more'}</bdi>
            </li>
          ))}
          {row.problems.map(({ field, value, says }) => (
            <li key={`${field} ${says}`}>
              {field !== null && `${labelOf(field)} `}
              {value !== '' && <bdi>“{value.slice(0, 80)}” </bdi>}
              {says}
            </li>
          ))}
        </ul>
      </td>
    </tr>
  );
}

const Was = ({ text }: { text: string }) => (
  <>
    <del>
      <bdi>{text}</bdi>
    </del>
    {' → '}
  </>
);

function Key({ row: { key, outcome, begins }, kind }: { row: ImportRowLine; kind: ImportKind }) {
  if (key === null) return <bdi className="label">{begins.slice(0, 60)}</bdi>;
  const isThere = outcome === 'changed' || outcome === 'same' || outcome === 'applied';
  if (!isThere) return <bdi>{key}</bdi>;
  return (
    <Link href={kind === 'sets' ? setPath(key) : motorPath(key)}>
      <bdi>{key}</bdi>
    </Link>
  );
}
