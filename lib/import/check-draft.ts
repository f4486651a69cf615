import { motor as motorSchema } from '@/lib/plant/motor';
import { type Problem, read } from '@/lib/plant/reading';
import { set as setSchema } from '@/lib/plant/set';
import { mountingCode } from '@/lib/standards/mounting-code';
import type { FieldId, ImportKind } from './field';
import { fieldsOf } from './fields';
import { type Draft, type DraftOptions, FOR_THE_FILE, type SetDraft } from './row-draft';

/** What the row tells as a whole: its key, what the schemas say of it, what follows from the person's options. */
export function checkDraft(kind: ImportKind, draft: Draft, options: DraftOptions): void {
  const keyId = kind === 'sets' ? 'tag' : 'plantNumber';
  if (draft.key === null && !draft.problems.some(({ field }) => field === keyId))
    draft.problems.push({
      field: keyId,
      value: '',
      says: kind === 'sets' ? 'has no tag: a set is known by it' : 'has no motor number: a motor is known by it',
    });
  if (kind === 'motors') placeOf(draft, options);
  else setDefaults(draft, options);
  if (draft.motor) {
    const told = read(motorSchema, { id: 'none', ...draft.motor.motor });
    if (!told.ok) for (const one of told.problems) draft.problems.push(at(kind, draft, 'motor.motor.', one));
  }
  if (draft.set) {
    const told = read(setSchema, { tag: 'none', mounting: 'foot', ...draft.set.set });
    if (!told.ok) for (const one of told.problems) draft.problems.push(at(kind, draft, 'set.set.', one));
  }
  const rewinds = draft.motor?.rewinds;
  if (typeof rewinds === 'number' && !(Number.isInteger(rewinds) && rewinds >= 0 && rewinds <= 50))
    draft.problems.push({
      field: 'rewinds',
      value: draft.cells.rewinds ?? '',
      says: 'must be a whole number from 0 to 50',
    });
  if (draft.motor?.motor.ratings && ownRatings(draft) && Object.keys(draft.cells).some((id) => STAMPED.has(id)))
    draft.problems.push({
      field: null,
      value: '',
      says: 'tells ratings in numbered columns and in plain ones: leave one kind out',
    });
}

const STAMPED = new Set([
  'power',
  'powerHp',
  'powerKw',
  'volts',
  'hertz',
  'rpm',
  'amps',
  'connection',
  'pf',
  'efficiencyPct',
  'plateText',
]);
/** The row tells ratings one figure a column, as an export does. */
export const ownRatings = (draft: Draft): boolean => Object.keys(draft.cells).some((id) => /^rating\d/.test(id));

function placeOf(draft: Draft, options: DraftOptions): void {
  const { motor } = draft;
  if (!motor) return;
  const both = motor.store === undefined ? /^(.{1,80}?) \/ (.{1,80})$/.exec(motor.shelf ?? '') : null;
  if (both) {
    motor.store = both[1] as string;
    motor.shelf = both[2] as string;
  }
  if (motor.shelf !== undefined && motor.store === undefined && options.store) {
    motor.store = options.store;
    draft.from.store = FOR_THE_FILE;
  }
  const isShelf = motor.shelf !== undefined || (motor.store !== undefined && draft.cells.store !== undefined);
  if (motor.place === undefined && isShelf) motor.place = 'on-shelf';
  if (isShelf && motor.place !== 'on-shelf')
    draft.problems.push({
      field: 'place',
      value: draft.cells.place ?? '',
      says: `is ${motor.place} and names a shelf too: which one holds?`,
    });
}

/** A motor that is held in one way only tells how its set holds it; else a person's word for the file does. */
function setDefaults(draft: Draft, options: DraftOptions): void {
  const { set, motor } = draft;
  if (!set) return;
  if (set.area === undefined && options.area) {
    set.area = options.area;
    draft.from.area = FOR_THE_FILE;
  }
  nameOfPump(set, draft);
  if (set.set.mounting !== undefined || draft.cells.mounting !== undefined) return;
  const code = motor?.motor.mounting ? mountingCode(motor.motor.mounting) : null;
  const held = code?.ok ? heldBy(code.value.feet, code.value.hasFace) : null;
  if (held === null) {
    if (!options.mounting) return;
    set.set.mounting = options.mounting;
    draft.from.mounting = FOR_THE_FILE;
    return;
  }
  set.set.mounting = held;
  draft.from.mounting = draft.cells.im === undefined ? 'frame' : 'im';
  draft.notes.push({
    field: 'mounting',
    value: motor?.motor.mounting ?? '',
    says: `a motor so mounted is held by ${held} only`,
  });
}

/** A pump is kept with words for what it is; where the row has none, its kind or its maker are all it says. */
function nameOfPump({ pump }: SetDraft, draft: Draft): void {
  if (!pump || pump.description !== undefined) return;
  const source = (['kind', 'maker', 'serial'] as const).find((key) => typeof pump[key] === 'string');
  const told = source && pump[source];
  if (!source || !told) return;
  pump.description = told;
  draft.from.pump = `pump${source.charAt(0).toUpperCase()}${source.slice(1)}`;
  draft.notes.push({ field: 'pump', value: told, says: 'is all that the row says of what pump it is' });
}

const heldBy = (feet: boolean | null, face: boolean | null): 'foot' | 'face' | null =>
  feet === true && face === false ? 'foot' : feet === false && face === true ? 'face' : null;

function at(kind: ImportKind, draft: Draft, root: string, { path, value, says }: Problem) {
  const whole = `${root}${path}`;
  const id = idAt(kind).get(whole) ?? null;
  const told = id !== null && draft.cells[id] === undefined ? stampedId(path, draft) : id;
  return {
    field: told,
    value: (told === null ? null : draft.cells[told]) ?? value ?? '',
    says: told === null ? `${path} ${says}` : says,
  };
}

/** A figure of the plate that several columns could have told. */
function stampedId(path: string, draft: Draft): FieldId | null {
  const key = path.split('.').at(-1) as string;
  const could =
    key === 'hp' || key === 'kw' ? ['power', 'powerHp', 'powerKw'] : key.startsWith('volts') ? ['volts'] : [key];
  return (
    could.find((id) => draft.cells[id] !== undefined) ?? (draft.cells.plateText === undefined ? null : 'plateText')
  );
}

function idAt(kind: ImportKind): ReadonlyMap<string, FieldId> {
  return ID_AT[kind];
}
const paths = (kind: ImportKind) =>
  new Map(fieldsOf(kind).flatMap(({ id, path }): [string, FieldId][] => (path === null ? [] : [[path.join('.'), id]])));
const ID_AT = { sets: paths('sets'), motors: paths('motors') };
