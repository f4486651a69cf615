import { CONNECTION_WORDS, RATING_CELLS } from '@/lib/fields/rating-cells';
import { cellName, type Typed, typedRows } from '@/lib/fields/read-form';
import { Field, SelectField } from '../look/field';

/** Rows that stand empty below the last one told. */
const SPARE_ROWS = 1;
const CONNECTIONS = Object.entries(CONNECTION_WORDS).map(([value, words]) => ({ value, words }));

/** The rows of ratings, a cell for each figure as it stands on the plate. */
export function RatingInputs({ typed, errorOf }: { typed: Typed; errorOf: (name: string) => string | null }) {
  const rows = Math.min(24, Math.max(1, typedRows(typed).length + SPARE_ROWS));
  return (
    <>
      {Array.from({ length: rows }, (_, row) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a row is its place on the plate
        <fieldset key={row} className="rating-row">
          <legend className="label">Row {row + 1}</legend>
          <div className="cells">
            {RATING_CELLS.map(({ cell, label, hint }) => {
              const name = cellName(row, cell);
              const rest = { label, name, error: errorOf(name) };
              return cell === 'connection' ? (
                <SelectField
                  key={cell}
                  {...rest}
                  options={CONNECTIONS}
                  empty="not known"
                  defaultValue={typed[name] ?? ''}
                />
              ) : (
                <Field
                  key={cell}
                  {...rest}
                  autoComplete="off"
                  defaultValue={typed[name] ?? ''}
                  placeholder={row === 0 ? hint : ''}
                  maxLength={60}
                />
              );
            })}
          </div>
        </fieldset>
      ))}
    </>
  );
}
