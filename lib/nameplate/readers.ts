import { mountingCode } from '@/lib/standards/mounting-code';
import { readLength } from '@/lib/units/read-length';
import { readMass } from '@/lib/units/read-mass';
import { readNumber } from '@/lib/units/read-number';
import { readTemperature } from '@/lib/units/read-temperature';
import type { ReadingOfText } from '@/lib/units/reading-of-text';
import type { FieldName } from './field-name';
import { area } from './fields/area';
import { auxiliary } from './fields/auxiliary';
import { brake } from './fields/brake';
import { constantTorque } from './fields/constant-torque';
import { driveDuty } from './fields/drive-duty';
import { duty } from './fields/duty';
import { enclosure } from './fields/enclosure';
import { frame } from './fields/frame';
import { frameInType } from './fields/frame-in-type';
import { insulation } from './fields/insulation';
import { letters } from './fields/letters';
import { rotation } from './fields/rotation';
import { terminalBox } from './fields/terminal-box';
import { washdown } from './fields/washdown';
import { type PartReading, partOf, problemsAt } from './part-reading';
import type { PlateMotor } from './plate-reading';

/** How each thing that a motor has once is read. */
export const readers: Partial<Record<FieldName, (text: string) => PartReading>> = {
  frame,
  frameInType,
  mounting: (text) => {
    const read = mountingCode(text);
    if (!read.ok) return problemsAt('mounting', read.problems);
    const { name, terminalBox: side } = read.value;
    return partOf({ mounting: name, ...(side ? { terminalBox: side } : {}) });
  },
  phases: (text) => {
    const digit = /[13]/.exec(text)?.[0] ?? (/THREE/i.test(text) ? '3' : /SINGLE/i.test(text) ? '1' : null);
    return letters('phases', digit === null ? text : Number(digit), text);
  },
  poles: (text) => figureFor('poles', text, readNumber(text, { min: 2, max: 64 })),
  serviceFactor: (text) => figureFor('serviceFactor', text, readNumber(text, { min: 1, max: 2 })),
  leads: (text) => figureFor('leads', text, readNumber(text, { min: 2, max: 24 })),
  maxRpm: (text) => figureFor('maxRpm', text, readNumber(text.replace(/\s?rpm$/i, ''), { min: 20, max: 30_000 })),
  length: (text) => figureFor('lengthMm', text, readLength(text)),
  mass: (text) => figureFor('massKg', text, readMass(text)),
  ambient: (text) => figureFor('ambientC', text, readTemperature(highest(text))),
  design: (text) => letters('design', text.toUpperCase(), text),
  codeLetter: (text) => letters('codeLetter', text.toUpperCase(), text),
  ip: (text) => letters('ip', text.replaceAll(/[\s-]/g, '').toUpperCase(), text),
  driveDuty,
  washdown,
  area,
  enclosure,
  insulation,
  duty,
  rotation,
  terminalBox,
  auxiliary,
  brake,
  constantTorque,
};

function figureFor(key: keyof PlateMotor, text: string, read: ReadingOfText<number>): PartReading {
  if (!read.ok) return problemsAt(String(key), read.problems);
  const part = letters(key, read.value, text);
  return part.ok ? { ...part, doubts: read.doubts.map((one) => ({ ...one, path: String(key) })) } : part;
}

/** "-20 to +40 °C", "40 °C AMB": the highest ambient. */
const highest = (text: string): string =>
  text.replace(/\s?(?:MAX\.? ?)?AMB.*$/i, '').replace(/^.*?(?:TO|\.{2,3}|…|\/)\s?/i, '');
