import { cellName } from '@/lib/fields/read-form';

/** The input of a motor's form that shows a path of its record: a rating's figure stands in a cell. */
export function motorInputOf(path: string): string {
  if (path === 'setId') return 'inSet';
  if (path === 'shelfId' || path === 'place') return 'where';
  const [, row, key] = /^ratings\.(\d+)\.(\w+)$/.exec(path) ?? [];
  const cell = key === undefined ? undefined : CELLS[key];
  return cell === undefined ? path : cellName(Number(row), cell);
}

const CELLS: Record<string, 'output' | 'eff' | 'sf' | 'volts' | 'hertz' | 'rpm' | 'amps' | 'pf' | 'connection'> = {
  ...{ hp: 'output', kw: 'output', volts: 'volts', voltsMin: 'volts', voltsMax: 'volts', hertz: 'hertz', rpm: 'rpm' },
  ...{ amps: 'amps', pf: 'pf', efficiencyPct: 'eff', serviceFactor: 'sf', connection: 'connection' },
};
