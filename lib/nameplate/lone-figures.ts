import type { Problem } from '@/lib/plant/reading';
import type { FieldName } from './field-name';
import type { Token } from './token';

/** Figures with no word beside them that could say what they are: each is a problem naming what it could be. */
export function loneFigures(tokens: readonly Token[]): Problem[] {
  return tokens.flatMap((token, i): Problem[] => {
    if (token.kind !== 'figure') return [];
    const beside = [tokens[i - 1], tokens[i + 1]].filter((one) => one?.cell === token.cell);
    // A figure beside an unknown word belongs to that word: "EN 60034", "Lot 60".
    if (beside.some((one) => one?.kind === 'rest')) return [];
    const measures = beside.flatMap((one) => (one?.kind === 'measure' ? [one.field] : []));
    const could = [...new Set([...measures, ...usual(token.text)])].map((field) => NAMES[field] ?? field);
    if (could.length === 0) return [];
    const names = could.length > 1 ? could.join(' or ') : `${could[0]} or a number that is no rating`;
    return [{ path: 'ratings', value: token.text, says: `could be ${names}: nothing beside it says which` }];
  });
}

const NAMES: Partial<Record<FieldName, string>> = {
  volts: 'the volts',
  hertz: 'the hertz',
  power: 'the power',
  rpm: 'the speed',
  amps: 'the amps',
  efficiency: 'the efficiency',
  pf: 'the power factor',
  serviceFactor: 'the service factor',
  phases: 'the phases',
  poles: 'the poles',
  mass: 'the mass',
};

/** What such a figure usually is on a plate, by its size alone. Common practice, no source. */
function usual(text: string): FieldName[] {
  const values = text.split(/[/-]/).map((one) => Number(one.replace(/,(?=\d{3})/, '').replace(',', '.')));
  if (values.length > 4 || values.some(Number.isNaN)) return [];
  const all = (low: number, high: number) => values.every((one) => one >= low && one <= high);
  const found: FieldName[] = [];
  if (values.every((one) => one === 50 || one === 60)) found.push('hertz');
  if (all(100, 700)) found.push('volts');
  if (all(400, 3_600)) found.push('rpm');
  if (all(0.1, 0.99)) found.push('pf');
  if (all(70, 98)) found.push('efficiency');
  if (all(1, 1.5)) found.push('serviceFactor');
  if (all(0.1, 300)) found.push('power', 'amps');
  return found;
}
