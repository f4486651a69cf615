import { MOTOR_FIELDS } from '@/lib/fields/motor-fields';
import type { Typed } from '@/lib/fields/read-form';

/** That a form was filled in by an address, and which of its fields; nothing where none was. */
export function ToldNote({ told }: { told: Typed }) {
  const labels = MOTOR_FIELDS.filter(({ path }) => told[path] !== undefined).map(({ label }) => label.toLowerCase());
  return labels.length === 0 ? null : (
    <p className="problem-list" role="status">
      Filled in from what was found: {labels.join(', ')}. Look it over; nothing is saved yet.
    </p>
  );
}
