import type { Cell, Table } from '../table';

/** One published rate, from least to greatest as printed; of one figure both are it. */
export interface FailureRateRow {
  id: string;
  /** What failed where, in plain words. */
  what: string;
  of: 'motor' | 'pump';
  /** perHour: failures in an hour run; perYear: failures of one in a year; days, months, years: between failures of one. */
  in: 'perHour' | 'perYear' | 'days' | 'months' | 'years';
  printed: readonly [Cell, Cell];
}

export const failureRates: Table<FailureRateRow> = {
  source: {
    standard: 'none: handbooks, surveys and statements',
    edition: 'various',
    clause: 'failure rates of motors and pumps',
    texts: {
      'REL-CONTROL':
        'AC motor failure rate thread on control.com, quoting D. J. Smith, Reliability, Maintainability and Risk; and a statement of one site in it',
      'REL-PUMP77': 'Pump life expectancy statistics: trade articles of one author',
      'REL-ET50': 'Engineering forum thread 175455: refinery pumps, four in five to API',
      'REL-493': 'US power-systems reliability standard (IEEE 493) and the surveys of its family',
      'REL-NUKE': 'nuclear data for motor-driven pumps',
    },
  },
  unit: 'as the column `in` says',
  columns: {
    id: 'its name here',
    what: 'what failed, and where',
    of: 'motor or pump',
    in: 'what the figures count',
    printed: 'least and greatest, as printed',
  },
  rows: [
    {
      ...{ id: 'handbook', what: 'AC motor, a handbook’s range', of: 'motor', in: 'perHour' },
      printed: [
        [1e-6, 1, 'REL-CONTROL'],
        [2e-5, 1, 'REL-CONTROL'],
      ],
    },
    {
      ...{ id: 'one-site', what: '1400 motors of 25 to 3500 hp at one site, a statement', of: 'motor', in: 'days' },
      printed: [
        [1200, 1, 'REL-CONTROL'],
        [1100, 1, 'REL-CONTROL'],
      ],
    },
    {
      ...{ id: 'pump-fleet', what: '1200 pumps, all repairs of a year', of: 'pump', in: 'years' },
      printed: [
        [7.7, 1, 'REL-PUMP77'],
        [7.7, 1, 'REL-PUMP77'],
      ],
    },
    {
      ...{ id: 'refinery', what: 'refinery pumps', of: 'pump', in: 'months' },
      printed: [
        [50, 1, 'REL-ET50'],
        [50, 1, 'REL-ET50'],
      ],
    },
    {
      ...{ id: 'survey-600-v', what: 'induction motors up to 600 V, a survey', of: 'motor', in: 'perYear' },
      printed: [
        [0.0109, 0, 'REL-493'],
        [0.0109, 0, 'REL-493'],
      ],
    },
    {
      ...{ id: 'survey-200-hp', what: 'motors above 200 hp, the same survey', of: 'motor', in: 'perYear' },
      printed: [
        [0.0714, 0, 'REL-493'],
        [0.0824, 0, 'REL-493'],
      ],
    },
    {
      ...{ id: 'survey-1985', what: 'large motors above 200 hp, a survey of 1985', of: 'motor', in: 'perYear' },
      printed: [
        [0.0708, 0, 'REL-493'],
        [0.0708, 0, 'REL-493'],
      ],
    },
    {
      ...{ id: 'nuclear', what: 'motor-driven pump that fails while it runs, nuclear data', of: 'pump', in: 'perHour' },
      printed: [
        [5e-6, 0, 'REL-NUKE'],
        [5e-6, 0, 'REL-NUKE'],
      ],
    },
  ],
  notes: [
    'Published rates differ ten-fold and more; a plant’s own record beats all of them.',
    'Of figures between failures the longer time is the lesser rate: it stands first.',
  ],
};
