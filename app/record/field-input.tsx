import type { Field as FieldOfRecord, Units } from '@/lib/fields/field';
import { Choice } from '../look/choice';
import { Field, SelectField, TextAreaField } from '../look/field';

/** A field of a record as an input: typed as stamped, chosen from a list, or ticked. */
export function FieldInput({
  field,
  units,
  text,
  error,
  empty = 'not known',
}: {
  field: FieldOfRecord;
  units: Units;
  text: string;
  error: string | null;
  /** What an empty choice means. */
  empty?: string;
}) {
  const { path, label, choices, isMany, lines, type, unit, hint } = field;
  const rest = { label, name: path, error, ...(hint !== undefined && { hint }) };
  if (choices !== undefined && isMany)
    return (
      <div className="whole">
        <input type="hidden" name={path} value="" />
        <Choice legend={label} name={path} kind="many" options={choices} chosen={text.split(',')} error={error} />
      </div>
    );
  if (choices !== undefined) return <SelectField {...rest} options={choices} empty={empty} defaultValue={text} />;
  if (lines !== undefined)
    return (
      <div className="whole">
        <TextAreaField {...rest} rows={lines} defaultValue={text} />
      </div>
    );
  return (
    <Field
      {...rest}
      defaultValue={text}
      autoComplete="off"
      {...(type === undefined ? {} : { type })}
      {...(unit !== undefined && { unit: unit[units] })}
    />
  );
}
