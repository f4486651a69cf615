import type { Field, FieldId, ImportKind } from './field';
import { fieldOf, fieldsOf } from './fields';
import { headingUnit } from './heading-unit';
import { normalHeading } from './normal-heading';
import { unitOf } from './quantity';
import { unitsOf } from './units-of';

/** What a heading says. `field` null with a match: a person, or this project's own file, said to leave it out. */
export interface HeadingMatch {
  field: FieldId | null;
  unit: string | null;
  because: 'remembered' | 'name';
  /** From 0 to 2: which of two columns that claim one field has the better claim. */
  score: number;
}

/** What a site's people said before: the heading in small letters and digits, and the field, null for "leave it out". */
export type KnownHeadings = ReadonlyMap<string, FieldId | null>;

/** The field that a heading names, with the heading of its group above it where there is one. Null: nobody knows it. */
export function matchHeading(
  kind: ImportKind,
  heading: string,
  group: string,
  known: KnownHeadings,
): HeadingMatch | null {
  const whole = normalHeading(`${group} ${heading}`);
  if (whole === '') return null;
  const own = normalHeading(heading);
  const told = headingUnit(heading);
  const remembered = known.has(whole) ? whole : known.has(own) && group === '' ? own : null;
  if (remembered !== null) {
    const id = known.get(remembered) ?? null;
    const field = id === null ? null : fieldOf(kind, id);
    if (id === null || field)
      return { field: id, unit: field ? unitFor(field, told.unit) : null, because: 'remembered', score: 2 };
  }
  if (own === normalHeading(WHY_NOT)) return { field: null, unit: null, because: 'name', score: 1 };
  const words = headingUnit(`${group} ${heading}`);
  const tries: [name: string, score: number][] = [
    [whole, 1.1],
    [words.name, 1.05],
    [own, 1],
    [told.name, 0.95],
    [withoutNoise(heading), 0.8],
  ];
  for (const [name, score] of tries) {
    const found = byName(kind).get(name);
    if (!found || (name !== own && name !== whole && told.unit !== null && !takes(found, told.unit))) continue;
    return named(kind, found, told.unit ?? unitOf(heading.trim()) ?? unitInside(found, heading), score);
  }
  const near = nearest(kind, own) ?? nearest(kind, told.name);
  return near && named(kind, near, told.unit, 0.6);
}

/** The column of a file of refused rows that says why, and, beside it, the one that says which line. */
export const WHY_NOT = 'Why not';
export const LINE = 'Line';

function named(kind: ImportKind, field: Field, unit: string | null, score: number): HeadingMatch {
  // "Power (kW)" and "Power (hp)" are two columns of one sheet.
  const exact = field.id === 'power' && unit !== null ? fieldOf(kind, unit === 'hp' ? 'powerHp' : 'powerKw') : null;
  const isExact = exact !== null && (unit === 'hp' || unit === 'kw');
  return { field: isExact ? exact.id : field.id, unit: unitFor(field, unit), because: 'name', score };
}

const unitFor = (field: Field, unit: string | null): string | null =>
  unit !== null && takes(field, unit) ? unit : null;

/** Whether a figure of this field can be in this unit. */
const takes = (field: Field, unit: string): boolean => unitsOf(field).includes(unit);

/** "Pump BHP": the unit is a word of the name itself. */
function unitInside(field: Field, heading: string): string | null {
  for (const word of heading.slice(0, 120).split(/\s+/)) {
    const unit = unitOf(word);
    if (unit !== null && unit.length > 1 && takes(field, unit)) return unit;
  }
  return null;
}

/** Words that say only that the motor's plate is meant, or count. */
const NOISE = /^(?:motor|mtr|mot|electric|rated|nominal|nameplate|np|the|of|type|no|nr|number|value|name|code)$/;
const withoutNoise = (heading: string): string =>
  normalHeading(
    heading
      .slice(0, 120)
      .split(/[\s._/#-]+/)
      .filter((word) => !NOISE.test(normalHeading(word)))
      .join(' '),
  );

function nearest(kind: ImportKind, name: string): Field | null {
  if (name.length < SHORTEST_MISSPELT || name.length > 40) return null;
  const found = new Set<Field>();
  for (const [other, field] of byName(kind)) {
    const isLongEnough = other.length >= SHORTEST_MISSPELT && Math.abs(other.length - name.length) < 2;
    if (isLongEnough && isOneApart(name, other)) found.add(field);
  }
  const [only, ...more] = found;
  return more.length === 0 ? (only ?? null) : null;
}
const SHORTEST_MISSPELT = 5;

/** One letter more, less, other, or two beside each other changed. */
function isOneApart(a: string, b: string): boolean {
  const [short, long] = a.length <= b.length ? [a, b] : [b, a];
  let i = 0;
  while (i < short.length && short[i] === long[i]) i += 1;
  if (short.length < long.length) return short.slice(i) === long.slice(i + 1);
  if (short.slice(i + 1) === long.slice(i + 1)) return true;
  return short[i] === long[i + 1] && short[i + 1] === long[i] && short.slice(i + 2) === long.slice(i + 2);
}

function byName(kind: ImportKind): ReadonlyMap<string, Field> {
  return BY_NAME[kind];
}
const names = (kind: ImportKind) =>
  new Map(fieldsOf(kind).flatMap((field) => field.names.map((name): [string, Field] => [name, field])));
const BY_NAME = { sets: names('sets'), motors: names('motors') };
