import { readNumber } from '@/lib/units/read-number';
import { celsiusOfFahrenheit } from '@/lib/units/temperature';
import { QUANTITIES, type Quantity, type QuantityOf, unitOf } from '../quantity';
import { type Cell, type CellReading, cameAsDay, figureText, refused, told } from './cell';
import { byDecimalSign } from './decimal-sign';

/** One figure in the unit it is kept in: "4.5 in" is 114.3. A unit in the cell wins over the heading's. */
export function figureCell(cell: Cell, quantity: Quantity): CellReading<number> {
  if (cell.type === 'date') return refused(cameAsDay(cell.text));
  if (cell.text.length > LONGEST) return refused('is too long for a figure');
  const isNumber = cell.type === 'number';
  const { text, notes } = byDecimalSign(figureText(cell).trim(), isNumber ? '.' : cell.decimal);
  const parts = /^([-+]?)\s{0,3}([\d.,'½⅓⅔¼¾⅕⅙⅛⅜⅝⅞/ -]{1,30}(?:e[-+]?\d{1,3})?)(.{0,20})$/i.exec(text);
  // "4-pole": the dash belongs to the word.
  const written = parts?.[2]?.replace(/[- ]{1,3}$/, '').trim() ?? '';
  if (!parts || !/[\d½⅓⅔¼¾⅕⅙⅛⅜⅝⅞]/.test(written)) return refused('is not a figure');
  const { units, bounds, bare }: QuantityOf = QUANTITIES[quantity];
  const own = parts[3]?.trim() ?? '';
  const unit = own === '' ? null : unitOf(own);
  if (own !== '' && (unit === null || !(unit in units)))
    return refused(`ends in "${own}", which is not a unit of this column (${Object.keys(units).join(', ')})`);
  const size = sizeOf(written, bounds, isNumber || cell.decimal !== null);
  if (!size.ok) return size;
  const value = parts[1] === '-' ? -size.value : size.value;
  const by = unit ?? cell.unit;
  if (by === null && quantity === 'temperature' && value > HIGHEST_UNMARKED_C)
    return refused(`could be ${written} °C or ${written} °F: write the letter`);
  if (by === null && bare !== null)
    return refused(`could be ${written} ${bare[0]} or ${written} ${bare[1]}: write the unit`);
  const said = [...notes, ...size.notes];
  if (unit !== null && cell.unit !== null && unit !== cell.unit)
    said.push(`is in ${unit} where the heading says ${cell.unit}: the cell's own unit is taken`);
  return told(inKeptUnit(value, by, quantity), said);
}

const LONGEST = 60;
// As for a plate: ambients are stamped as 40, 50, 60 °C or as 104, 122, 140 °F. Common practice, no source.
const HIGHEST_UNMARKED_C = 80;

function sizeOf(written: string, bounds: QuantityOf['bounds'], isSignKnown: boolean): CellReading<number> {
  const isPlain = isSignKnown
    ? /^\d*\.?\d+(?:e[-+]?\d+)?$/i.test(written)
    : /^(?:\d+|\d*\.\d{1,2}|\d*\.\d{4,})$/.test(written);
  if (isPlain) return told(Number(written));
  const read = readNumber(written, bounds);
  return read.ok
    ? told(
        read.value,
        read.doubts.map(({ says }) => says),
      )
    : refused(read.problems.map(({ says }) => says).join('; '));
}

function inKeptUnit(value: number, unit: string | null, quantity: Quantity): number {
  if (quantity === 'temperature') return unit === 'f' ? rounded(celsiusOfFahrenheit(value), 1) : value;
  const { units }: QuantityOf = QUANTITIES[quantity];
  const factor = unit === null ? 1 : (units[unit] ?? 1);
  return factor === 1 ? value : rounded(value * factor, 6);
}

const rounded = (value: number, digits: number): number => Math.round(value * 10 ** digits) / 10 ** digits;
