/** Years until what is saved each year has paid the extra cost. 0: it costs no more. `never`: it saves nothing. Null: not known. */
export function simplePayback(extraCost: number | null, savedPerYear: number | null): number | 'never' | null {
  if (extraCost === null || savedPerYear === null) return null;
  if (extraCost <= 0) return 0;
  return savedPerYear <= 0 ? 'never' : extraCost / savedPerYear;
}
