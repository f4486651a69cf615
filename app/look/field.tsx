import type { HTMLInputTypeAttribute, ReactNode } from 'react';

interface Asked {
  label: string;
  name: string;
  /** Where two fields of one name stand on a page. */
  id?: string;
  hint?: ReactNode;
  /** What is wrong with the value, as a sentence. */
  error?: string | null;
  required?: boolean;
  /** The id of the form it belongs to, where it does not stand in it. */
  form?: string;
}

/** A labelled input with its unit, a hint, and what is wrong under it. */
export function Field({
  type = 'text',
  unit,
  defaultValue,
  inputMode,
  autoComplete,
  placeholder,
  readOnly,
  maxLength,
  ...asked
}: Asked & {
  type?: HTMLInputTypeAttribute;
  unit?: string;
  defaultValue?: string | number | null;
  inputMode?: 'decimal' | 'numeric' | 'text' | 'search';
  autoComplete?: string;
  placeholder?: string;
  readOnly?: boolean;
  maxLength?: number;
}) {
  const input = (
    <input
      className="in"
      type={type}
      defaultValue={defaultValue ?? undefined}
      inputMode={inputMode}
      autoComplete={autoComplete}
      placeholder={placeholder}
      readOnly={readOnly}
      maxLength={maxLength}
      {...attributesOf(asked)}
    />
  );
  return (
    <FieldFrame {...asked}>
      {unit === undefined ? (
        input
      ) : (
        <div className="unit">
          {input}
          <span>{unit}</span>
        </div>
      )}
    </FieldFrame>
  );
}

export function TextAreaField({
  defaultValue,
  rows = 3,
  maxLength,
  onText,
  ...asked
}: Asked & { defaultValue?: string | null; rows?: number; maxLength?: number; onText?: (text: string) => void }) {
  return (
    <FieldFrame {...asked}>
      <textarea
        className="in"
        rows={rows}
        defaultValue={defaultValue ?? undefined}
        maxLength={maxLength}
        onInput={onText && ((event) => onText(event.currentTarget.value))}
        {...attributesOf(asked)}
      />
    </FieldFrame>
  );
}

/** A native list. `empty` names the choice of nothing: "not known". */
export function SelectField({
  options,
  empty,
  defaultValue,
  ...asked
}: Asked & { options: readonly { value: string; words: string }[]; empty?: string; defaultValue?: string | null }) {
  return (
    <FieldFrame {...asked}>
      <select className="in" defaultValue={defaultValue ?? undefined} {...attributesOf(asked)}>
        {empty !== undefined && <option value="">{empty}</option>}
        {options.map(({ value, words }) => (
          <option key={value} value={value}>
            {words}
          </option>
        ))}
      </select>
    </FieldFrame>
  );
}

function FieldFrame({ label, name, id = name, hint, error, required, children }: Asked & { children: ReactNode }) {
  return (
    <div className="field">
      <label htmlFor={id}>
        {label}
        {required === false && <span className="label"> (may stay empty)</span>}
      </label>
      {children}
      {hint !== undefined && (
        <p className="hint label" id={`${id}-hint`}>
          {hint}
        </p>
      )}
      {error && (
        <p className="wrong" id={`${id}-wrong`}>
          {error}
        </p>
      )}
    </div>
  );
}

function attributesOf({ name, id = name, hint, error, required, form }: Asked) {
  const described = [hint !== undefined && `${id}-hint`, error && `${id}-wrong`].filter(Boolean).join(' ');
  return {
    id,
    name,
    form,
    required: required === true,
    'aria-invalid': error ? true : undefined,
    'aria-describedby': described === '' ? undefined : described,
  };
}
