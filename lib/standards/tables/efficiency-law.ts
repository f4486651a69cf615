import type { Table } from '../table';

/** Powers in kW, ends included; the level as its region names it. */
export interface EfficiencyLawRow {
  region: string;
  /** First day of force, YYYY-MM-DD. */
  from: string;
  fromKw: number;
  toKw: number;
  poles: readonly number[];
  level: 'IE2' | 'IE3' | 'IE4' | 'premium';
  /** Left out of the row, though its power and poles are in it. */
  not: readonly ('brake' | 'area')[];
  texts: 0 | 1 | 2;
  src: string;
}

/** The least efficiency class that the law of a region asks of a motor put on its market. */
export const efficiencyLaw: Table<EfficiencyLawRow> = {
  source: {
    standard: 'national law, not a standard: each row names its own',
    edition: 'as known on 29 November 2026; laws change, and a buyer asks a competent person',
    clause: 'as each row says',
    texts: {
      UKSI: 'UK S.I. 2021/745, Schedule 16 (the UK text of the Annex of Regulation (EU) 2019/1781); second text: an encyclopaedia’s article on IEC 60034',
      CFR: '10 CFR 431.25, Table 5: NEMA design A and B, 1 to 500 hp (one text names the table; the figures of 1 to 200 hp in two)',
      CFR2027: '10 CFR 431.25 as amended in 2023, design A and B of 100 to 250 hp',
      CA: 'Canada, Energy Efficiency Regulations: as the United States',
      CN: 'China, GB 18613-2020, grade 3',
      BR: 'Brazil, Portaria Interministerial 1 of 2017',
      AU: 'Australia and New Zealand, AS/NZS 1359.5, high-efficiency level',
    },
  },
  unit: 'kW',
  columns: { region: 'where it is put on the market', from: 'in force from', level: 'least class' },
  rows: [
    ...euAndUk('European Union'),
    ...euAndUk('Great Britain'),
    ...premium({ region: 'United States', from: '2016-06-01', texts: 1, src: 'CFR' }),
    { ...{ region: 'United States', from: '2027-06-01', fromKw: 74.5, toKw: 186.5, poles: [2, 4, 6] }, ...{ level: 'IE4', not: [], texts: 0, src: 'CFR2027' } },
    ...premium({ region: 'Canada', from: '2017-06-28', texts: 0, src: 'CA' }),
    { ...{ region: 'China', from: '2021-06-01', fromKw: 0.12, toKw: 1000, poles: [2, 4, 6, 8] }, ...{ level: 'IE3', not: [], texts: 0, src: 'CN' } },
    { ...{ region: 'Brazil', from: '2019-08-30', fromKw: 0.12, toKw: 370, poles: [2, 4, 6, 8] }, ...{ level: 'IE3', not: [], texts: 0, src: 'BR' } },
    { ...{ region: 'Australia and New Zealand', from: '2006-04-01', fromKw: 0.73, toKw: 185, poles: [2, 4, 6, 8] }, ...{ level: 'IE2', not: [], texts: 0, src: 'AU' } },
  ],
  notes: [
    'Three-phase motors alone. Exceptions (submerged, built into the machine, extreme surroundings, other hertz) are not in it.',
    'An increased-safety motor (Ex eb) is asked for IE2 from 1 July 2023 in the European Union and Great Britain; which protection a mark has is not kept, so an area mark is told apart only where a row leaves it out.',
  ],
};

/** The table prints 2 and 4 poles up to 500 hp, 6 up to 350 and 8 up to 250: beyond, nothing is asked. */
function premium(of: Pick<EfficiencyLawRow, 'region' | 'from' | 'texts' | 'src'>): EfficiencyLawRow[] {
  const row = { ...of, fromKw: 0.745, level: 'premium', not: [] } as const;
  return [
    { ...row, toKw: 373, poles: [2, 4] },
    { ...row, toKw: 261, poles: [6] },
    { ...row, toKw: 187, poles: [8] },
  ];
}

function euAndUk(region: string): EfficiencyLawRow[] {
  const of = { region, poles: [2, 4, 6, 8], not: [], texts: 2, src: 'UKSI' } as const;
  return [
    { ...of, from: '2021-07-01', fromKw: 0.12, toKw: 0.7499, level: 'IE2' },
    { ...of, from: '2021-07-01', fromKw: 0.75, toKw: 1000, level: 'IE3' },
    { ...of, from: '2023-07-01', fromKw: 75, toKw: 200, poles: [2, 4, 6], level: 'IE4', not: ['brake', 'area'] },
  ];
}
