import type { PlateReading } from '@/lib/nameplate/plate-reading';
import type { Problem } from '@/lib/plant/reading';
import type { FieldId } from './field';
import { valueAt } from './value-at';

/** A plate's problems whose value was taken all the same are doubts: worth saying, not refusing. */
export function doubtsApart({ motor, problems }: Pick<PlateReading, 'motor' | 'problems'>): {
  problems: Problem[];
  doubts: Problem[];
} {
  const isDoubt = ({ path }: Problem): boolean => path !== 'ratings' && valueAt(motor, path.split('.')) !== undefined;
  return { problems: problems.filter((one) => !isDoubt(one)), doubts: problems.filter(isDoubt) };
}

/** The column that a problem of the plate is about, of those that the row fills. */
export function fieldOfPath(path: string, filled: ReadonlyMap<FieldId, unknown>): FieldId {
  const key = path.split('.').at(-1) as string;
  const could = COLUMNS[key] ?? [key];
  return could.find((id) => filled.has(id)) ?? (could[0] as FieldId);
}

const POWERS = ['power', 'powerHp', 'powerKw'];
const COLUMNS: Readonly<Record<string, readonly FieldId[]>> = {
  hp: POWERS,
  kw: ['power', 'powerKw', 'powerHp'],
  voltsMin: ['volts'],
  voltsMax: ['volts'],
  mounting: ['im', 'frame'],
  terminalBox: ['terminalBox', 'im'],
  ip: ['ip', 'enclosure'],
  poles: ['poles', 'frame', 'rpm'],
  ratings: ['plateText', 'volts', ...POWERS],
};
