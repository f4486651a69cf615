/** One row of a sheet as its reader hands it on. `line` counts from 1, as the person sees it. */
export interface SheetRow {
  line: number;
  cells: string[];
  types?: CellType[];
  /** A cell of the row reaches over several columns. */
  merged?: boolean;
}

export type CellType = 'text' | 'number' | 'date' | 'bool' | 'error' | 'empty';
