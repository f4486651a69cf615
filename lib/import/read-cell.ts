import { rotation } from '@/lib/nameplate/fields/rotation';
import { plainLine } from '@/lib/nameplate/plain-line';
import { type Cell, type CellReading, refused, told } from './cells/cell';
import { classificationCell } from './cells/classification-cell';
import { dayCell } from './cells/day-cell';
import { figureCell } from './cells/figure-cell';
import { auxiliariesCell } from './cells/list-cell';
import { nameCell, textCell } from './cells/text-cell';
import { wordCell, yesNoCell } from './cells/word-cell';
import type { Field } from './field';

/** The value of one cell, as its field is read. Cells of the plate are read together, elsewhere. */
export function readCell(cell: Cell, field: Field): CellReading<unknown> {
  const { shape } = field;
  if (field.id === 'ip' || field.id === 'placeIp') return ipCell(cell);
  switch (shape.as) {
    case 'text':
      return textCell(cell, shape.most, shape.isLong);
    case 'name':
      return nameCell(cell, shape.most);
    case 'figure':
      return figureCell(cell, shape.quantity);
    case 'word': {
      const read = wordCell(cell, shape.words, shape.vague);
      return read.ok && shape.isNumber ? told(Number(read.value)) : read;
    }
    case 'yes-no':
      return yesNoCell(cell);
    case 'day':
      return dayCell(cell);
    case 'auxiliaries':
      return auxiliariesCell(cell);
    case 'rotation':
      return rotationCell(cell);
    case 'classification':
      return classificationCell(cell, shape.mayBeUnclassified);
    case 'plate':
    case 'plate-text':
      return refused('is read with the other cells of its plate');
  }
}

/** "IP55", "IP 55", "55" under a heading that says IP. */
function ipCell({ text }: Cell): CellReading<string> {
  const code = /^(?:IP)?[ -]?([0-6X][0-9X]K?)$/i.exec(plainLine(text))?.[1];
  return code === undefined ? refused('must be IP and two digits, such as IP55') : told(`IP${code.toUpperCase()}`);
}

function rotationCell({ text }: Cell): CellReading<string> {
  if (text.length > 80) return refused('is longer than a rotation');
  const read = rotation(text);
  if (read.ok && read.value.rotation) return told(read.value.rotation);
  return refused(read.ok ? 'is not a rotation: CW, CCW or EITHER' : read.problems.map(({ says }) => says).join('; '));
}
