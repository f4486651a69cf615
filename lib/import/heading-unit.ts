import { normalHeading } from './normal-heading';
import { unitOf } from './quantity';

/** A heading and the unit it names: "Power (kW)", "Ambient °F", "Shaft height [in]", "Leistung in kW", "Power, kW". */
export function headingUnit(heading: string): { name: string; unit: string | null } {
  const text = heading.slice(0, 120).trim();
  const bracket = /[([{]([^()[\]{}]{1,14})[)\]}]/.exec(text);
  const inside = bracket ? unitOf(bracket[1] as string) : null;
  if (bracket && inside !== null)
    return { name: normalHeading(text.replace(bracket[0], ' ')) || normalHeading(inside), unit: inside };
  const marked = /[,;:/]\s{0,3}([^\s,;:/]{1,12})$|\sin\s([^\s]{1,12})$|\s?([°º]\s?[CF])$/i.exec(text);
  const behind = marked ? unitOf((marked[1] ?? marked[2] ?? marked[3]) as string) : null;
  if (marked && behind !== null && marked.index > 0)
    return { name: normalHeading(text.slice(0, marked.index)), unit: behind };
  const last = /\s([^\s]{1,12})$/.exec(text);
  const word = last ? unitOf(last[1] as string) : null;
  if (last && word !== null && !LETTERS_OF_MANY_MEANINGS.has(word))
    return { name: normalHeading(text.slice(0, last.index)), unit: word };
  const first = /^(NEMA|IEC)\s/i.exec(text);
  if (first) return { name: normalHeading(text.slice(first[0].length)), unit: unitOf(first[1] as string) };
  return { name: normalHeading(text), unit: null };
}

/** "Class F", "Plant A", "Ways in": a lone letter at the end of a heading is no unit unless a sign says so. */
const LETTERS_OF_MANY_MEANINGS = new Set(['a', 'm', 'c', 'f', 'v', 'w', 'in', 't', 'p', ':1']);
