import { maxCOf } from '@/lib/standards/area-order';
import { type PartReading, problemAt } from '../part-reading';
import { letters } from './letters';

/** The hazardous-area mark, when it names one place in one scheme: class and division, or a zone or protection level. */
export function area(text: string): PartReading {
  return /CL(?:ASS|\.)? ?(?:I|[123])/i.test(text) ? nec(text) : iec(text);
}

const CLASS = /CL(?:ASS|\.)? ?(I{1,3}|[123])(?![A-Z\d])/gi;
const DIVISION = /DIV(?:ISION|\.)? ?([12]|I{1,2})(?![A-Z\d])/gi;
const GROUPS = /GR(?:OU)?PS?\.? ?([A-G](?:[\s,&+/]*(?:AND )?[A-G](?![A-Z\d]))*)/gi;
const CODE = /T[1-6][A-D]?(?![A-Z\d])/gi;

function nec(text: string): PartReading {
  const classes = all(text, CLASS);
  const divisions = all(text, DIVISION);
  const codes = all(text, CODE);
  const groups = all(text, GROUPS).flatMap((list) => list.replace(/AND/gi, '').match(/[A-G]/gi) ?? []);
  const [place] = classes;
  const [division] = divisions;
  if (classes.length > 1)
    return problemAt(
      'classification',
      text,
      `names ${classes.map((one) => `Class ${one}`).join(' and ')}: a motor is kept with one`,
    );
  if (place === undefined || division === undefined)
    return problemAt('classification', text, 'does not say Division 1 or Division 2');
  if (divisions.length > 1 || codes.length > 1)
    return problemAt(
      'classification',
      text,
      `names ${[...divisions.map((one) => `Division ${one}`), ...codes].join(' and ')}: which one holds?`,
    );
  return letters(
    'classification',
    {
      scheme: 'NEC',
      class: numberOf(place),
      division: numberOf(division),
      groups: [...new Set(groups.map((one) => one.toUpperCase()))],
      tempCode: codes[0]?.toUpperCase() ?? null,
    },
    text,
  );
}

function iec(text: string): PartReading {
  const zones = new Set([
    ...all(text, /\b([GD][abc])(?![A-Za-z\d])/g).map((level) => ZONE_OF_LEVEL[level]),
    ...all(text, /II ?([123] ?(?:GD|G|D))(?![A-Za-z\d])/g).flatMap((category) => zonesOf(category.replace(' ', ''))),
    ...all(text, /ZONE ?(\d{1,2})/gi).map(Number),
  ]);
  const groups = new Set(all(text, /\b(III?[ABC])(?![A-Za-z\d])/g));
  const heats = new Set([
    ...all(text, /\b(T[1-6])(?![A-D\d])/g).map((code) => maxCOf(code)),
    ...all(text, /\bT ?(\d{2,3}) ?°? ?C/g).map(Number),
  ]);
  if (zones.size !== 1)
    return problemAt(
      'classification',
      text,
      zones.size === 0
        ? 'does not say for which zone: no protection level (Gb, Gc, Db, Dc), category or zone'
        : `could be for zone ${[...zones].join(' or zone ')}: a motor is kept with one`,
    );
  if (groups.size > 1 || heats.size > 1)
    return problemAt(
      'classification',
      text,
      `names ${[...groups, ...[...heats].map((one) => `${one} °C`)].join(' and ')}: which one holds?`,
    );
  return letters(
    'classification',
    { scheme: 'IEC', zone: [...zones][0], group: [...groups][0] ?? null, tempC: [...heats][0] ?? null },
    text,
  );
}

/** Equipment protection levels and the zones they are built for: IEC 60079-14 (from memory). */
const ZONE_OF_LEVEL: Record<string, number> = { Ga: 0, Gb: 1, Gc: 2, Da: 20, Db: 21, Dc: 22 };

/** Categories of Directive 2014/34/EU, annex I (from memory): 1, 2 and 3 are zones 0, 1 and 2 of gas, 20, 21 and 22 of dust. */
function zonesOf(category: string): number[] {
  const step = Number(category[0]) - 1;
  return [...category.slice(1)].map((letter) => (letter === 'G' ? step : 20 + step));
}

const all = (text: string, pattern: RegExp): string[] => [...text.matchAll(pattern)].map((one) => one[1] ?? one[0]);
const numberOf = (roman: string): number => (/^I+$/i.test(roman) ? roman.length : Number(roman));
