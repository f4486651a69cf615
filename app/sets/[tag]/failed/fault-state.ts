/** What stood in a form of a fault when it was sent last, and why it was not taken; null before the first sending. */
export interface FaultState {
  seen: readonly string[];
  says: string;
  problem: string | null;
}

export const NOT_SENT: FaultState = { seen: [], says: '', problem: null };
