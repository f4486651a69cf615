const KW_RPM_PER_NM = 30_000 / Math.PI; // P = T·ω: 9549.3, printed as 9550 in handbooks
const NM_PER_LBFT = 1.3558179483314; // exact: 0.3048 m × 4.4482216152605 N

/** Torque in N·m that carries `kw` at `rpm`. */
export const torqueNmOf = (kw: number, rpm: number): number => (KW_RPM_PER_NM * kw) / rpm;
/** Power in kW carried by a torque of `nm` at `rpm`. */
export const kwOfTorque = (nm: number, rpm: number): number => (nm * rpm) / KW_RPM_PER_NM;
export const nmOfLbft = (lbft: number): number => lbft * NM_PER_LBFT;
