import type { Dialect } from '@/lib/sheet/dialect';
import { ActionButton } from '../../look/action';
import { Facts } from '../../look/facts';
import { SelectField } from '../../look/field';
import { SectionHead } from '../../look/section-head';
import { DECIMAL_WORDS, DELIMITER_WORDS, ENCODING_WORDS, FORMAT_WORDS } from '../import-words';
import { readAnewHere } from './steer-here';

const options = <T extends string>(words: Readonly<Record<T, string>>) =>
  Object.entries<string>(words).map(([value, said]) => ({ value, words: said }));

/** How the file is written, as it was found; a person may say otherwise while nothing is in the register. */
export function WrittenHow({ runId, dialect, mayChange }: { runId: string; dialect: Dialect; mayChange: boolean }) {
  const { format, encoding, delimiter, decimal, sheet, sheets, says } = dialect;
  const isText = format === 'csv';
  return (
    <>
      <SectionHead title="How it is written" aside={FORMAT_WORDS[format]} />
      <Facts
        rows={[
          ...(encoding === null ? [] : [{ label: 'Encoding', value: ENCODING_WORDS[encoding] }]),
          ...(delimiter === null ? [] : [{ label: 'Cells parted by', value: DELIMITER_WORDS[delimiter] }]),
          { label: 'Decimal sign', value: decimal === null ? 'no figure tells' : DECIMAL_WORDS[decimal] },
          ...(sheet === null ? [] : [{ label: 'Sheet', value: <bdi>{sheet}</bdi> }]),
        ]}
      />
      <ul className="says label">
        {says.map((one) => (
          <li key={one}>{one}</li>
        ))}
      </ul>
      {mayChange && (
        <details className="views">
          <summary className="to">It is written otherwise</summary>
          <form action={readAnewHere}>
            <input type="hidden" name="run" value={runId} />
            <div className="two">
              {isText && (
                <>
                  <SelectField
                    label="Encoding"
                    name="encoding"
                    defaultValue={encoding}
                    options={options(ENCODING_WORDS)}
                  />
                  <SelectField
                    label="Cells parted by"
                    name="delimiter"
                    defaultValue={delimiter}
                    options={options(DELIMITER_WORDS)}
                  />
                </>
              )}
              <SelectField
                label="Decimal sign"
                name="decimal"
                defaultValue={decimal}
                options={options(DECIMAL_WORDS)}
              />
              {!isText && (
                <SelectField
                  label="Sheet"
                  name="sheet"
                  defaultValue={sheet}
                  options={sheets.map((name) => ({ value: name, words: name }))}
                />
              )}
            </div>
            <div className="mt-3 grid">
              <ActionButton second>Read it again so</ActionButton>
            </div>
          </form>
        </details>
      )}
    </>
  );
}
