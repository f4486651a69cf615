/** A rule by which plants decide without working anything out. Bedplate tells what it says and decides nothing by it. */
export interface CustomaryRule {
  id: 'cost-half' | 'cost-60' | 'small' | 'payback';
  /** As a sentence with its threshold. */
  says: string;
  threshold: number;
  unit: '%' | 'kW' | 'years';
  source: string;
}

/**
 * The customary rules, each with where it comes from. They contradict each other: that is why none of them is a verdict.
 * The two guides are pages of the trade for United States plants, each read in one text.
 */
export const CUSTOMARY_RULES: readonly CustomaryRule[] = [
  {
    id: 'cost-half',
    says: 'Replace when the repair costs more than half of a new motor',
    ...{ threshold: 50, unit: '%' },
    source: 'common practice, no source',
  },
  {
    id: 'cost-60',
    says: 'Rewind a standard motor only below 60 % of the price of a new premium-efficiency one',
    ...{ threshold: 60, unit: '%' },
    source: 'a supplier’s guide to repair or replacement, read in one text',
  },
  {
    id: 'small',
    says: 'Give a standard motor of 18.5 kW (25 hp) or less new bearings, but no new winding',
    ...{ threshold: 18.5, unit: 'kW' },
    source: 'a supplier’s guide to repair or replacement, read in one text',
  },
  {
    id: 'payback',
    says: 'Replace when the energy saved pays what a new motor costs more within two years',
    ...{ threshold: 2, unit: 'years' },
    source:
      '“Electric motors: Repair or replace?”, trade article of 2011, read in one text, which calls it the habit of the 1990s',
  },
];

/** What a rewind by good practice did to efficiency, where it was measured before and after. */
export const MEASURED_CHANGE = {
  fromPts: -0.5,
  toPts: 0.3,
  meanPts: -0.1,
  source:
    'EASA/AEMT study of 2019: ten premium-efficiency (IE3) motors of 30 to 75 kW, rewound to ANSI/EASA AR100 and measured by IEEE 112 B, whose accuracy is ±0.2; as reported in the trade press of July 2020',
} as const;
