import type { FieldName } from './field-name';

const JOIN = String.raw`[\s,/&+;-]*`;
const NEC = String.raw`CL(?:ASS|\.)? ?(?:I{1,3}|[123])(?![A-Z\d])(?:${JOIN}(?:CL(?:ASS|\.)? ?(?:I{1,3}|[123])|DIV(?:ISION|\.)? ?(?:[12]|I{1,2})|GR(?:OU)?PS?\.? ?[A-G](?:[\s,&+/]*(?:AND )?[A-G](?![A-Z\d]))*|(?:OPER(?:ATING)?\.? )?(?:TEMP\.?(?: ?CODE)? ?)?T[1-6][A-D]?)(?![A-Z\d]))*`;
const IEC = String.raw`(?:(?:⟨?Ex⟩?${JOIN})?II ?[123] ?(?:GD|G|D)|E?Ex|ZONE ?\d{1,2})(?![A-Z\d])(?:[\s,/()-]*(?:(?:⟨?E?Ex⟩?)|II ?[123] ?(?:GD|G|D)|[a-z]{1,3}|I{1,3}[ABC]?|T ?\d{2,3} ?°? ?C|T[1-6]|ZONE ?\d{1,2}|G[abc]|D[abc]|X)(?![A-Za-z\d]))*`;

/** Marks of hazardous areas: as long as their words go on. */
export const areaWords: readonly { field: FieldName; pattern: RegExp }[] = [
  { field: 'area', pattern: new RegExp(NEC, 'iy') },
  { field: 'area', pattern: new RegExp(IEC, 'y') },
];
