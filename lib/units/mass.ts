const KG_PER_POUND = 0.45359237; // exact: international pound of 1959

export const kgOfPounds = (pounds: number): number => pounds * KG_PER_POUND;
