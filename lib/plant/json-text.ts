import type { Reading } from './reading';

/** Text read as one JSON value; what is no JSON is told with its line and column, and what would be right there. */
export function jsonText(text: string): Reading<unknown> {
  const bare = text.startsWith(BYTE_ORDER_MARK) ? text.slice(1) : text;
  if (bare.trim() === '') return refused('is empty: must be JSON');
  try {
    return { ok: true, value: JSON.parse(bare) };
  } catch {
    // The engines word it differently, and not all of them tell the place.
    return refused(`is not JSON: ${breakIn(bare)}`);
  }
}

const BYTE_ORDER_MARK = '\uFEFF';
const refused = (says: string): Reading<unknown> => ({
  ok: false,
  problems: [{ path: '(whole)', value: null, says }],
});

/** What may stand next, in words. */
const VALUE = 'a value';
const VALUE_OR_END = 'a value or ]';
const KEY = 'a key in double quotes';
const KEY_OR_END = 'a key in double quotes or }';
const COLON = 'a colon';
const COMMA_IN_LIST = 'a comma or ]';
const COMMA_IN_GROUP = 'a comma or }';
const NOTHING = 'the end of the text';

/** The first place where the text stops being JSON. One pass without recursion: nesting may be as deep as the text is long. */
function breakIn(text: string): string {
  const within: ('[' | '{')[] = [];
  const after = () => {
    const inside = within.at(-1);
    if (inside === undefined) return NOTHING;
    return inside === '[' ? COMMA_IN_LIST : COMMA_IN_GROUP;
  };
  let expected = VALUE;
  let at = 0;
  for (;;) {
    SPACE.lastIndex = at;
    at += SPACE.exec(text)?.[0].length ?? 0;
    const char = text[at];
    if (char === undefined) return told(text, at, expected);
    const isValue = expected === VALUE || expected === VALUE_OR_END;
    const isKey = expected === KEY || expected === KEY_OR_END;
    if (char === '"' && (isValue || isKey)) {
      const string = stringAt(text, at);
      if (string.wrong !== null) return told(text, string.end, string.wrong);
      at = string.end;
      expected = isKey ? COLON : after();
    } else if (isValue && (char === '[' || char === '{')) {
      within.push(char);
      at += 1;
      expected = char === '[' ? VALUE_OR_END : KEY_OR_END;
    } else if (char === ']' ? expected === VALUE_OR_END || expected === COMMA_IN_LIST : isGroupEnd(char, expected)) {
      within.pop();
      at += 1;
      expected = after();
    } else if (char === ',' && (expected === COMMA_IN_LIST || expected === COMMA_IN_GROUP)) {
      at += 1;
      expected = expected === COMMA_IN_LIST ? VALUE : KEY;
    } else if (char === ':' && expected === COLON) {
      at += 1;
      expected = VALUE;
    } else {
      WORD.lastIndex = at;
      const word = isValue ? WORD.exec(text)?.[0] : undefined;
      if (word === undefined) return told(text, at, expected);
      at += word.length;
      expected = after();
    }
  }
}

const SPACE = /[ \t\n\r]*/y;
const WORD = /(?:true|false|null|-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?)(?![\w.+-])/y;
const isGroupEnd = (char: string, expected: string) =>
  char === '}' && (expected === KEY_OR_END || expected === COMMA_IN_GROUP);

/** The end of the string that starts at `from`, or the place in it that is wrong. */
function stringAt(text: string, from: number): { end: number; wrong: string | null } {
  for (let at = from + 1; at < text.length; at += 1) {
    const char = text[at];
    if (char === '"') return { end: at + 1, wrong: null };
    if (char !== undefined && char < ' ') return { end: at, wrong: 'an escape such as \\n, or the closing quote' };
    if (char === '\\') {
      ESCAPE.lastIndex = at;
      const escaped = ESCAPE.exec(text)?.[0];
      if (escaped === undefined) return { end: at, wrong: 'an escape such as \\" or \\u00e9' };
      at += escaped.length - 1;
    }
  }
  return { end: text.length, wrong: 'the closing quote' };
}

const ESCAPE = /\\(?:["\\/bfnrt]|u[\dA-Fa-f]{4})/y;

function told(text: string, at: number, expected: string): string {
  const before = text.slice(0, at);
  const line = before.split('\n').length;
  const column = at - before.lastIndexOf('\n');
  const found = at === text.length ? 'the text ends there' : `found ${JSON.stringify(text.slice(at, at + 12))}`;
  return `line ${line}, column ${column} must be ${expected} (${found})`;
}
