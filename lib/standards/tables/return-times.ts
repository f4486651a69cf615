/** How long until a motor is in the plant: bought, or back from repair with a new winding. */
export const returnTimes = {
  source: {
    standard: 'none: a supplier’s article on the turnaround of a rewind, and common practice',
    read: 'times of rewinding in one text; times of delivery: common practice, no source',
    texts: { 'VENDOR-REWIND-1': 'Turnaround time of a rewind (supplier’s article, name withheld)' },
  },
  unit: 'as printed, in the row',
  columns: { id: 'what is waited for', upToHp: 'rated power up to which it holds; null: any', low: 'at best', high: 'at worst' },
  rows: [
    { id: 'rewind', upToHp: 10, low: 3, high: 7, unit: 'working days', status: 'published', src: 'VENDOR-REWIND-1' },
    { id: 'rewind', upToHp: 100, low: 1, high: 2, unit: 'weeks', status: 'published', src: 'VENDOR-REWIND-1' },
    { id: 'rewind', upToHp: null, low: 2, high: 4, unit: 'weeks', status: 'published', src: 'VENDOR-REWIND-1' },
    { id: 'in-stock', upToHp: null, low: 0, high: 5, unit: 'days', status: 'common practice', src: null },
    { id: 'standard', upToHp: null, low: 1, high: 4, unit: 'weeks', status: 'common practice', src: null },
    { id: 'washdown', upToHp: null, low: 3, high: 12, unit: 'weeks', status: 'common practice', src: null },
    { id: 'area-classified', upToHp: null, low: 6, high: 20, unit: 'weeks', status: 'common practice', src: null },
  ],
  notes: [
    'Printed for up to about 10 hp, 15 to 100 hp, and 150 hp and above (or more): a motor between two takes the longer.',
    'in-stock: a common frame on a distributor’s shelf; standard: totally enclosed, not on that shelf.',
  ],
} as const;
