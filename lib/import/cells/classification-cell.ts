import { area } from '@/lib/nameplate/fields/area';
import { plainLine } from '@/lib/nameplate/plain-line';
import { type Classification, classification } from '@/lib/plant/classification';
import { read } from '@/lib/plant/reading';
import { type Cell, type CellReading, refused, told } from './cell';

/** "Zone 22, IIIB, 125 °C", "Class I Div 2 Group D T3"; for a place also "unclassified". */
export function classificationCell({ text }: Cell, mayBeUnclassified: boolean): CellReading<Classification | null> {
  if (text.length > 200) return refused('is too long for a classification');
  if (mayBeUnclassified && UNCLASSIFIED.test(text)) return told(null);
  const plain = plainLine(text).replaceAll(/\s+/g, ' ').trim();
  const ours = OURS.exec(plain);
  if (ours) {
    const [, zone, group, tempC] = ours;
    return checked({
      scheme: 'IEC',
      zone: Number(zone),
      group: group ?? null,
      tempC: tempC === undefined ? null : Number(tempC),
    });
  }
  if (/(?:^|[^A-Z\d])T ?\d{2,3}(?! ?°? ?C)/i.test(plain))
    return refused('names a temperature without °C: write it as 125 °C');
  const marked = area(plain);
  if (!marked.ok) return refused(marked.problems.map(({ says }) => says).join('; '));
  const lost = leftOver(plain);
  return lost === null
    ? checked(marked.value.classification)
    : refused(`"${lost}" is not understood: write it as "Zone 22, IIIB, 125 °C" or "Class I, Division 2, group D, T3"`);
}

const UNCLASSIFIED =
  /^(?:none|no|unclassified|non-?hazardous|not hazardous|safe|safe area|general|not classified|non-?classified)$/i;
const OURS = /^Zone (\d{1,2})(?:, (III?[ABC]))?(?:, (\d{1,3}(?:\.\d{1,20})?) °C)?$/;

function checked(value: unknown): CellReading<Classification> {
  const one = read(classification, value);
  return one.ok ? told(one.value) : refused(one.problems.map(({ path, says }) => `${path} ${says}`).join('; '));
}

/** A word of the mark that says more than its reader takes. */
function leftOver(text: string): string | null {
  for (const word of text.split(/[\s,;/()]+/)) if (word !== '' && !KNOWN_WORD.test(word)) return word;
  return null;
}
const KNOWN_WORD =
  /^(?:CL\.?|CLASS|CL(?:ASS)?\.?I{1,3}|I{1,3}|[1-4]|DIV\.?|DIVISION|DIV\.?[12]|GR\.?|GRPS?\.?|GROUPS?|[A-G]|AND|&|TEMP\.?|CODE|T[1-6][A-D]?|ZONE|ZONE\d{1,2}|\d{1,2}|E?EX|ATEX|IECEX|II|I?II[ABC]|II\d|[123]?(?:GD|G|D)|II[123](?:GD|G|D)|[a-z]{1,3}|[GD][abc]|T?\d{2,3}|T?\d{2,3}°?C|°?C|OPERATING)$/i;
