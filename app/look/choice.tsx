import type { ReactNode } from 'react';

export interface ChoiceOption {
  value: string;
  words: ReactNode;
  aside?: string;
}

/** Square for many, round for one; the row is the target. */
export function Choice({
  legend,
  name,
  kind,
  options,
  chosen,
  error,
}: {
  legend: string;
  name: string;
  kind: 'one' | 'many';
  options: readonly ChoiceOption[];
  chosen: readonly string[];
  error?: string | null;
}) {
  return (
    <fieldset className="field" id={name} aria-describedby={error ? `${name}-wrong` : undefined}>
      <legend>{legend}</legend>
      {options.map(({ value, words, aside }) => (
        <label className="tick" key={value}>
          <input
            type={kind === 'one' ? 'radio' : 'checkbox'}
            name={name}
            value={value}
            defaultChecked={chosen.includes(value)}
          />
          <span>{words}</span>
          {aside !== undefined && <span className="dim">{aside}</span>}
        </label>
      ))}
      {error && (
        <p className="wrong" id={`${name}-wrong`}>
          {error}
        </p>
      )}
    </fieldset>
  );
}
