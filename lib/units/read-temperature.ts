import { readNumber } from './read-number';
import { notUnderstood, type ReadingOfText, understood } from './reading-of-text';
import { celsiusOfFahrenheit } from './temperature';

/** An ambient such as "40 °C", "40C", "104°F", "-20 °C", in °C. Without a letter it is °C only where °F is not possible. */
export function readTemperature(text: string): ReadingOfText<number> {
  const parts = /^([+-]?)\s?(\d[\d.,]{0,6})\s?(?:°|º|deg\.?)?\s?([CF])?$/i.exec(text.trim().replace('−', '-'));
  if (!parts) return notUnderstood(text, 'is not a temperature: write it as 40 °C or 104 °F');
  const read = readNumber(parts[2] as string, { min: 0, max: 250 });
  if (!read.ok) return read;
  const value = parts[1] === '-' ? -read.value : read.value;
  const letter = parts[3]?.toUpperCase();
  if (letter === 'F') return within(text, Math.round(celsiusOfFahrenheit(value) * 10) / 10);
  if (letter === 'C') return within(text, value);
  if (value > HIGHEST_UNMARKED_C)
    return notUnderstood(text, `could be ${parts[2]} °C or ${parts[2]} °F: write the letter`);
  return within(text, value);
}

// Ambients are stamped as 40, 50, 60 °C or as 104, 122, 140 °F: below 80 a bare figure is °C. Common practice, no source.
const HIGHEST_UNMARKED_C = 80;

function within(text: string, celsius: number): ReadingOfText<number> {
  if (celsius < -60 || celsius > 120) return notUnderstood(text, 'is not an ambient between −60 °C and 120 °C');
  return understood(celsius);
}
