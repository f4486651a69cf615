/** What of a JSON Schema a parameter here can have. */
export interface Schema {
  type?: string;
  format?: string;
  enum?: readonly (string | number)[];
  minimum?: number;
  maximum?: number;
  maxLength?: number;
  maxItems?: number;
  items?: Schema;
}

/** What a parameter may be: "a whole number, 1 to 200". */
export function kindInWords({
  type,
  format,
  enum: values,
  minimum,
  maximum,
  maxLength,
  maxItems,
  items,
}: Schema): string {
  if (items !== undefined) return `${kindInWords(items)}, once or more, up to ${maxItems ?? 'any'} times`;
  if (values !== undefined) return values.join(', ');
  if (format === 'uuid') return 'a UUID';
  if (type === 'integer' || type === 'number') {
    const what = type === 'integer' ? 'a whole number' : 'a number';
    return minimum === undefined || maximum === undefined ? what : `${what}, ${minimum} to ${maximum}`;
  }
  return maxLength === undefined ? 'text' : `text of at most ${maxLength} characters`;
}
