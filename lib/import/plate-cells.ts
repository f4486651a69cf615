import type { Fact } from '@/lib/nameplate/field-name';
import { frame } from '@/lib/nameplate/fields/frame';
import { motorOf } from '@/lib/nameplate/motor-of';
import type { PlateMotor } from '@/lib/nameplate/plate-reading';
import { readSpeed } from '@/lib/units/read-speed';
import { type Cell, cameAsDay, figureText } from './cells/cell';
import { byDecimalSign } from './cells/decimal-sign';
import { spoiltBy } from './cells/text-cell';
import type { Field, FieldId } from './field';
import { doubtsApart, fieldOfPath } from './plate-problems';
import { unitOf } from './quantity';

/** One cell of the plate: which field it is and what stands in it. */
export interface PlateCell {
  field: Field;
  cell: Cell;
}

/** What the cells of a plate say together. `from` names the cell that a value without a cell of its own came from. */
export interface PlateCells {
  motor: PlateMotor;
  from: Partial<Record<keyof PlateMotor, FieldId>>;
  problems: { field: FieldId; says: string }[];
  notes: { field: FieldId; says: string }[];
}

/**
 * Reads the cells of one plate as a nameplate is read: "230/460" volts and "13.2/6.6" amps make two rows of ratings.
 * `poles` are those of the row's own column, against which the speeds are held.
 */
export function plateCells(cells: readonly PlateCell[], poles: number | null): PlateCells {
  const problems: PlateCells['problems'] = [];
  const notes: PlateCells['notes'] = [];
  const facts: Fact[] = poles === null ? [] : [{ field: 'poles', text: String(poles), line: 0, at: 0 }];
  const texts = new Map<FieldId, string>();
  for (const { field, cell } of cells) {
    if (field.shape.as !== 'plate') continue;
    const wrong = wrongWith(field.id, cell);
    if (wrong !== null) {
      problems.push({ field: field.id, says: wrong });
      continue;
    }
    const made = stampedText(field, field.shape.unit, cell);
    notes.push(...made.notes.map((says) => ({ field: field.id, says })));
    texts.set(field.id, made.texts.join(' / '));
    const { fact } = field.shape;
    for (const text of made.texts) facts.push({ field: fact, text, line: 0, at: facts.length });
  }
  const read = motorOf(facts);
  const { motor } = read;
  const apart = doubtsApart(read);
  const of = (path: string): FieldId => fieldOfPath(path, texts);
  problems.push(
    ...apart.problems.map(({ path, says, value }) => ({ field: of(path), says: `${value ?? ''} ${says}`.trim() })),
  );
  notes.push(
    ...apart.doubts.map(({ path, says, value }) => ({ field: of(path), says: `${value ?? ''} ${says}`.trim() })),
  );
  const from: PlateCells['from'] = {};
  const speedPoles = polesBeside(texts.get('rpm'));
  const framePoles = polesOfFrame(texts.get('frame'));
  if (speedPoles !== null && [poles, framePoles].some((told) => told !== null && told !== speedPoles))
    problems.push({ field: 'rpm', says: `names ${speedPoles} poles where the row says ${poles ?? framePoles}` });
  if (poles !== null || (speedPoles === null && framePoles === null))
    delete motor.poles; // its own column tells it, or only the slip
  else from.poles = framePoles === null ? 'rpm' : 'frame';
  if (motor.mounting !== undefined && !texts.has('im')) from.mounting = 'frame';
  if (motor.terminalBox !== undefined) from.terminalBox = 'im';
  if (motor.ip !== undefined) from.ip = 'enclosure';
  return { motor, from, problems, notes };
}

const FIGURES = new Set(['power', 'powerHp', 'powerKw', 'volts', 'hertz', 'rpm', 'amps', 'pf', 'efficiencyPct']);

/** What stands in the way of reading the cell at all. */
function wrongWith(id: FieldId, cell: Cell): string | null {
  if (cell.text.length > LONGEST_STAMPED) return 'is longer than anything stamped';
  if (id === 'frame') return spoiltBy(cell);
  if (cell.type === 'date') return cameAsDay(cell.text);
  if (id === 'insulation' && !INSULATION.test(cell.text)) return 'is not a thermal class such as B, F, H or 155';
  if (id === 'duty' && !DUTY.test(cell.text)) return 'is not a duty type: S1 to S10, or CONT for S1';
  const two = RUN_TOGETHER[id];
  if (two?.test(cell.text) && cell.type !== 'number')
    return 'could be one figure with decimals or two with a sign between: write two with a stroke, as 50/60';
  return null;
}

/** "50,60" is no frequency and "1750,1450" no speed. */
const RUN_TOGETHER: Readonly<Record<FieldId, RegExp>> = {
  volts: /\d{3}[.,]\d{3}/,
  hertz: /[56]0[.,][56]0/,
  rpm: /\d{3}[.,]\d{2}/,
};

const LONGEST_STAMPED = 80;
const INSULATION =
  /^(?:(?:class|cl|kl|iso|ins|klasse|classe|clase)\.? ?)?(?:\d{3} ?\(? ?[A-Z]? ?\)?|[A-Z](?: ?\/ ?[A-Z])?)$/i;
const DUTY = /^(?:S ?\d{1,2}(?:[ -].{0,30})?|CONT(?:INUOUS|\.)?(?: DUTY)?)$/i;

/** The cell as a plate would stamp it, its unit behind it. */
function stampedText(field: Field, ownUnit: string, cell: Cell): { texts: string[]; notes: string[] } {
  if (field.id === 'frame') {
    const system = cell.unit?.toUpperCase() ?? '';
    return { texts: [system === '' || /NEMA|IEC/i.test(cell.text) ? cell.text : `${system} ${cell.text}`], notes: [] };
  }
  if (!FIGURES.has(field.id)) return { texts: [cell.text], notes: [] };
  const { text, notes } = byDecimalSign(figureText(cell), cell.type === 'number' ? '.' : cell.decimal);
  if (field.shape.as !== 'plate' || field.shape.fact !== 'power') return { texts: [text], notes };
  const unit = cell.unit ?? (ownUnit === '' ? null : ownUnit.toLowerCase());
  if (!/[a-z]/i.test(text)) return { texts: [unit === null ? text : `${text} ${unit}`], notes };
  const own = unitOf(/[a-z][a-z. ]{0,14}$/i.exec(text)?.[0] ?? '');
  if (unit !== null && own !== null && own !== unit)
    notes.push(`is in ${own} where the heading says ${unit}: the cell's own unit is taken`);
  const parts = text.split(/[/(),;]/).filter((part) => part.trim() !== '');
  const isEachInItsUnit = parts.length > 1 && parts.every((part) => /\d.{0,20}[a-z]\.?\s{0,3}$/i.test(part));
  return { texts: isEachInItsUnit ? parts.map((part) => part.trim()) : [text], notes };
}

function polesBeside(text: string | undefined): number | null {
  const read = text === undefined ? null : readSpeed(text);
  return read?.ok ? (read.value[0]?.poles ?? null) : null;
}

function polesOfFrame(text: string | undefined): number | null {
  const read = text === undefined ? null : frame(text);
  return read?.ok ? (read.value.poles ?? null) : null;
}
