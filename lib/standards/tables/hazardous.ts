import type { Status } from '../dimension';

/** Orders by which one hazardous-area mark covers another. They screen out wrong motors and approve none. */
export const hazardous = {
  source: {
    standard: 'NFPA 70 (NEC) articles 500 to 503; IEC 60079-0, 60079-10-1, 60079-10-2; ATEX 2014/34/EU Annex I',
    clause: 'NEC 500.5, 500.6, table 500.8(C)(4); IEC 60079-0 clauses 4 and 5',
    read: 'two temperature-code charts; a zones and categories page; a poster guide to ATEX and IECEx',
    second: 'each value carries its own status',
  },
  unit: 'degrees C of surface temperature, where a temperature stands',
  columns: { code: 'temperature code', maxC: 'greatest surface temperature', zone: 'zone', covers: 'zones a mark serves' },
  temperatureCodes: [
    { code: 'T1', maxC: 450, status: 'published-2' },
    { code: 'T2', maxC: 300, status: 'published-2' },
    { code: 'T2A', maxC: 280, status: 'published-2' },
    { code: 'T2B', maxC: 260, status: 'published-2' },
    { code: 'T2C', maxC: 230, status: 'published-2' },
    { code: 'T2D', maxC: 215, status: 'published-2' },
    { code: 'T3', maxC: 200, status: 'published-2' },
    { code: 'T3A', maxC: 180, status: 'published-2' },
    { code: 'T3B', maxC: 165, status: 'published-2' },
    { code: 'T3C', maxC: 160, status: 'published-2' },
    { code: 'T4', maxC: 135, status: 'published-2' },
    { code: 'T4A', maxC: 120, status: 'published-2' },
    { code: 'T5', maxC: 100, status: 'published-2' },
    { code: 'T6', maxC: 85, status: 'published-2' },
  ],
  /** Gas and dust are separate: neither covers the other. */
  zones: [
    { zone: 0, of: 'gas', covers: [0, 1, 2], status: 'published-2' },
    { zone: 1, of: 'gas', covers: [1, 2], status: 'published-2' },
    { zone: 2, of: 'gas', covers: [2], status: 'published-2' },
    { zone: 20, of: 'dust', covers: [20, 21, 22], status: 'published-2' },
    { zone: 21, of: 'dust', covers: [21, 22], status: 'published-2' },
    { zone: 22, of: 'dust', covers: [22], status: 'published-2' },
  ],
  groups: [
    { group: 'IIA', covers: ['IIA'], status: 'published-2' },
    { group: 'IIB', covers: ['IIA', 'IIB'], status: 'published-2' },
    { group: 'IIC', covers: ['IIA', 'IIB', 'IIC'], status: 'published-2' },
    { group: 'IIIA', covers: ['IIIA'], status: 'memory' },
    { group: 'IIIB', covers: ['IIIA', 'IIIB'], status: 'memory' },
    { group: 'IIIC', covers: ['IIIA', 'IIIB', 'IIIC'], status: 'memory' },
  ],
  notes: [
    'NEC groups are listed one by one on the plate: B is not taken to cover C.',
    'NEC Division 1 covers Division 2 of the same class; classes do not cover each other (memory).',
    'A mark of one scheme is never held against a place of the other here.',
  ],
} satisfies {
  temperatureCodes: readonly { code: string; maxC: number; status: Status }[];
  zones: readonly { zone: number; of: 'gas' | 'dust'; covers: readonly number[]; status: Status }[];
  groups: readonly { group: string; covers: readonly string[]; status: Status }[];
  [part: string]: unknown;
};
