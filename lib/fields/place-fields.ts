import { type Field, textField } from './field';
import { SURROUNDINGS } from './set-fields';

export const AREA_FIELDS: readonly Field[] = [textField('name', 'Name', 80), ...SURROUNDINGS];
export const NAME_FIELD: Field = textField('name', 'Name', 80);
