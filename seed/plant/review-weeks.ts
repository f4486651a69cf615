/** How the review changed on a day, counted back from today. */
interface ReviewStep {
  daysAgo: number;
  /** Findings that came and went on it. */
  opened: number;
  closed: number;
  /** What the open ones cost in a year changed by so much, kWh. */
  kwh: number;
}

/** The first day of which it is kept how the review stood, counted back from today. */
export const FIRST_DAYS_AGO = 37;

/** Bedplate did not run on these days. */
export const NOT_KEPT: readonly number[] = [21, 20];

/** Oldest first; days between are as the day before. All invented. */
export const STEPS: readonly ReviewStep[] = [
  { daysAgo: 34, opened: 1, closed: 0, kwh: 1_540 },
  { daysAgo: 30, opened: 0, closed: 3, kwh: -3_620 },
  { daysAgo: 25, opened: 1, closed: 0, kwh: 1_360 },
  { daysAgo: 19, opened: 1, closed: 3, kwh: -4_150 },
  { daysAgo: 12, opened: 1, closed: 0, kwh: 0 },
  { daysAgo: 9, opened: 0, closed: 1, kwh: -1_880 },
  { daysAgo: 5, opened: 1, closed: 0, kwh: 0 },
];
