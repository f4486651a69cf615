import { isId } from '@/lib/register/is-id';
import type { FaultFilter } from '@/lib/register/queries/faults';
import type { Query } from '../lists/asked-for';

/** Over how many days closed faults are looked at. */
export const DAYS = [30, 90, 365, 3650] as const;

/** Which faults the address asks for. What is not understood is not asked. */
export function faultsAsked({ area, days }: Query): FaultFilter {
  return {
    areaId: typeof area === 'string' && isId(area) ? area : null,
    days: DAYS.find((one) => String(one) === days) ?? 90,
  };
}

/** The question of a filter, to be kept and sent on. */
export function faultsQuestion({ areaId, days }: FaultFilter): string {
  return `?${new URLSearchParams({ ...(areaId !== null && { area: areaId }), days: String(days) })}`;
}
