import type { KnownArea } from '@/lib/register/queries/areas';

/** "area Bagging"; an area that is no more is told as such. */
export const areaWords = (areaId: string, areas: readonly KnownArea[]): string =>
  `area ${areas.find((one) => one.areaId === areaId)?.name ?? 'that is not in use'}`;
