const MM_PER_INCH = 25.4; // exact: international inch of 1959

export const mmOfInches = (inches: number): number => inches * MM_PER_INCH;
export const inchesOfMm = (mm: number): number => mm / MM_PER_INCH;
