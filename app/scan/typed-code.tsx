import { useState } from 'react';
import { readLabelCode } from '@/lib/plant/label-code';

/** The code as it stands on the label, typed. Without script the form asks /find, which knows codes too. */
export function TypedCode({ id, onCode }: { id: string; onCode: (code: string) => void }) {
  const [wrong, setWrong] = useState<string | null>(null);
  return (
    <form
      action="/find"
      onSubmit={(event) => {
        event.preventDefault();
        const typed = String(new FormData(event.currentTarget).get('q') ?? '');
        const read = readLabelCode(typed);
        if (read.ok) return onCode(read.value);
        setWrong(`“${typed}” ${read.problems.map(({ says }) => says).join('; ')}.`);
      }}
    >
      <div className="field">
        <label htmlFor={id}>The code on the label</label>
        <input
          className="in"
          id={id}
          name="q"
          maxLength={60}
          autoComplete="off"
          autoCapitalize="characters"
          spellCheck={false}
          placeholder="XXXX-XXXX"
          aria-invalid={wrong === null ? undefined : true}
          aria-describedby={wrong === null ? undefined : `${id}-wrong`}
        />
        {wrong !== null && (
          <p className="wrong" id={`${id}-wrong`} role="alert">
            {wrong}
          </p>
        )}
      </div>
      <button type="submit" className="second mt-3 w-full">
        Go to it
      </button>
    </form>
  );
}
