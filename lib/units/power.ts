const KW_PER_HP = 0.745699871582; // exact: 550 ft·lbf/s
const KW_PER_METRIC_HP = 0.73549875; // exact: 75 kgf·m/s, "PS" or "CV" on European plates

export const kwOfHp = (hp: number): number => hp * KW_PER_HP;
export const hpOfKw = (kw: number): number => kw / KW_PER_HP;
export const kwOfMetricHp = (ps: number): number => ps * KW_PER_METRIC_HP;
