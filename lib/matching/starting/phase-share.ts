/** 1/√3, rounded as the trade does: the share of the line amps in each leg of a delta. */
export const PHASE_SHARE = 0.58;
