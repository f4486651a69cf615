/** The longest text that is looked for: a tag has at most 60 letters, a few words not many more. */
export const LONGEST_FIND = 100;

/** The find box, a plain form. */
export function FindForm({ typed, wrong }: { typed?: string; wrong?: string }) {
  return (
    <search>
      <form action="/find" className="find-form">
        <div className="field">
          <label htmlFor="q">Find a set</label>
          <input
            className="in"
            id="q"
            name="q"
            type="search"
            defaultValue={typed}
            maxLength={LONGEST_FIND}
            placeholder="Tag or service"
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
        {wrong !== undefined && (
          <p className="field wrong" id="q-wrong">
            {wrong}
          </p>
        )}
      </form>
    </search>
  );
}
