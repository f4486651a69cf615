/** A swap cannot be undone, so each test has a set of its own, and no other test may empty it. */
export const OWN_SETS = {
  desk: { whole: 'CP-108', without: 'SL-107', race: 'CP-110', taking: 'EF-101' },
  phone: { whole: 'OR-106', without: 'OR-102', race: 'RF-107', taking: 'EF-110' },
} as const;

/** Faults are told and closed here, so each project has its own. */
const FAULT_SETS = {
  desk: { quick: 'CP-112', repaired: 'SL-110', swapped: 'EF-104' },
  phone: { quick: 'OR-110', repaired: 'RF-103', swapped: 'EF-108' },
} as const;

/** What is recorded at the pump. */
export const PUMP_SETS = {
  whole: 'BG-102',
  taken: 'BG-103',
  taker: 'SK-110',
  tabs: 'BG-104',
  fault: 'EF-107',
  draft: 'BG-105',
  clock: 'LB-101',
} as const;

/** Swapped by keys alone, at the pump. */
export const BY_KEYS = 'BG-105';

/** Swapped with readings, and read again: each project has its own. */
const JOB_SETS = { desk: 'OR-107', phone: 'CP-113' } as const;

export const jobSetOf = (project: string) => JOB_SETS[project === 'phone' ? 'phone' : 'desk'];

export const faultSetsOf = (project: string) => FAULT_SETS[project === 'phone' ? 'phone' : 'desk'];

/** Swaps are tried on these and refused. */
export const REFUSED = 'OR-115';

export const ownSetsOf = (project: string) => OWN_SETS[project === 'phone' ? 'phone' : 'desk'];

const TAKEN: readonly string[] = [
  REFUSED,
  BY_KEYS,
  ...Object.values(PUMP_SETS),
  ...Object.values(JOB_SETS),
  ...[...Object.values(OWN_SETS), ...Object.values(FAULT_SETS)].flatMap((sets) => Object.values(sets)),
];

/** No test counts on the motor of this set. */
export const isFree = (tag: string): boolean => !TAKEN.includes(tag);
