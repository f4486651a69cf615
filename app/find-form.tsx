import Link from 'next/link';

/** The longest text that is looked for: a tag has at most 60 letters, a few words not many more. */
export const LONGEST_FIND = 100;

/** The find box, a plain form. */
export function FindForm({ typed, wrong }: { typed?: string; wrong?: string }) {
  return (
    <search>
      <form action="/find" className="find-form">
        <div className="field">
          <label htmlFor="q">Find a set by tag or service</label>
          <input
            className="in"
            id="q"
            name="q"
            type="search"
            defaultValue={typed}
            maxLength={LONGEST_FIND}
            autoComplete="off"
            autoCapitalize="characters"
            spellCheck={false}
            aria-invalid={wrong === undefined ? undefined : true}
            aria-describedby={wrong === undefined ? undefined : 'q-wrong'}
          />
        </div>
        <button className="action" type="submit">
          Find
        </button>
        <Link className="scan-link" href="/scan" aria-label="Scan">
          <svg viewBox="0 0 24 24" fill="none" stroke="currentColor" strokeWidth="2" aria-hidden="true">
            <path d="M3 8V3h5M16 3h5v5M21 16v5h-5M8 21H3v-5M7 12h10" />
          </svg>
        </Link>
        {wrong !== undefined && (
          <p className="field wrong" id="q-wrong">
            {wrong}
          </p>
        )}
      </form>
    </search>
  );
}
