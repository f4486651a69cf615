import type { Field, FieldId, ImportKind } from './field';
import { motorFields } from './fields/motor-fields';
import { ratingFields, stampedFields } from './fields/rating-fields';
import { setFields } from './fields/set-fields';

/** Every field that a sheet of this kind can tell, in the order an export writes them. */
export const fieldsOf = (kind: ImportKind): readonly Field[] => FIELDS[kind];

/** One field by its id; null where no such field is known, as in what an older version remembered. */
export const fieldOf = (kind: ImportKind, id: FieldId): Field | null => BY_ID[kind].get(id) ?? null;

/** As an exported column is headed: "Shaft power (kW)". */
export const headingOf = ({ label, unit }: Field): string => (unit === null ? label : `${label} (${unit})`);

const FIELDS: Readonly<Record<ImportKind, readonly Field[]>> = {
  sets: [...setFields, ...motorFields('sets'), ...stampedFields, ...ratingFields],
  motors: [...motorFields('motors'), ...stampedFields, ...ratingFields],
};

const byId = (kind: ImportKind) => new Map(FIELDS[kind].map((field) => [field.id, field]));
const BY_ID = { sets: byId('sets'), motors: byId('motors') };
