/** What was typed, field by field; a field of ticks has several. Passwords are not repeated. */
export type Typed = Record<string, string[]>;

/** How a form of a few fields was answered. */
export type AskState =
  | { outcome: 'asked' }
  | { outcome: 'saved'; says: string }
  /** Shown in this answer and nowhere again. */
  | { outcome: 'told'; says: string; secret: string }
  | { outcome: 'refused'; problems: { path: string; says: string }[]; typed: Typed }
  | { outcome: 'away' | 'signed-out'; typed: Typed };

/** The fields of such a form, as data: the page says what is asked, ask-form.tsx shows it. */
export type AskField =
  | {
      kind: 'text' | 'email' | 'password' | 'figure' | 'date';
      name: string;
      label: string;
      hint?: string;
      unit?: string;
      autoComplete?: string;
      value?: string;
      readOnly?: true;
    }
  | {
      kind: 'list';
      name: string;
      label: string;
      hint?: string;
      options: { value: string; words: string }[];
      value?: string;
    }
  | { kind: 'ticks'; name: string; label: string; options: { value: string; words: string }[]; values: string[] }
  | { kind: 'hidden'; name: string; value: string };
