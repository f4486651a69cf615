import type { Classification } from '@/lib/plant/classification';
import { hazardous } from './tables/hazardous';

export type AreaAxis = 'scheme' | 'place' | 'group' | 'temperature';
export interface AreaShortfall {
  /** `lower` is proven too little; `not-stated` cannot be told from the mark or the place. */
  kind: 'lower' | 'not-stated';
  axis: AreaAxis;
}

/**
 * The worst axis on which a motor's area mark does not cover a place; null when it covers it on every axis.
 * Axes: the scheme, the place (class and division, or zone), the group, the surface temperature.
 */
export function areaShortfall(have: Classification, need: Classification): AreaShortfall | null {
  if (have.scheme === 'IEC')
    return need.scheme === 'IEC'
      ? worst(zoneAxis(have, need), groupAxis(have, need), heatAxis(have.tempC, need.tempC))
      : ANOTHER_SCHEME;
  if (need.scheme !== 'NEC') return ANOTHER_SCHEME;
  return worst(
    divisionAxis(have, need),
    listedAxis(have, need),
    heatAxis(maxCOf(have.tempCode), maxCOf(need.tempCode)),
  );
}

/** A classification in the order the trade says it: "Class II, Division 2, group G, T4"; "Zone 22, IIIB, 125 °C". */
export function areaInWords(area: Classification): string {
  if (area.scheme === 'IEC') {
    const heat = area.tempC === null ? '' : `, ${area.tempC} °C`;
    return `Zone ${area.zone}${area.group === null ? '' : `, ${area.group}`}${heat}`;
  }
  const groups = area.groups.length === 0 ? '' : `, group ${area.groups.join(', ')}`;
  return `Class ${ROMAN[area.class]}, Division ${area.division}${groups}${area.tempCode === null ? '' : `, ${area.tempCode}`}`;
}

/** Greatest surface temperature of a temperature code; null when untold or no code of the table. */
export const maxCOf = (code: string | null): number | null => (code === null ? null : (MAX_C.get(code) ?? null));

type Iec = Extract<Classification, { scheme: 'IEC' }>;
type Nec = Extract<Classification, { scheme: 'NEC' }>;

const ANOTHER_SCHEME: AreaShortfall = { kind: 'lower', axis: 'scheme' };
const ROMAN = { 1: 'I', 2: 'II', 3: 'III' } as const;
const MAX_C = new Map<string, number>(hazardous.temperatureCodes.map((row) => [row.code, row.maxC]));
const ZONE_COVERS = new Map<number, readonly number[]>(hazardous.zones.map((row) => [row.zone, row.covers]));
const GROUP_COVERS = new Map<string, readonly string[]>(hazardous.groups.map((row) => [row.group, row.covers]));

const lower = (axis: AreaAxis): AreaShortfall => ({ kind: 'lower', axis });
const notStated = (axis: AreaAxis): AreaShortfall => ({ kind: 'not-stated', axis });

function worst(...axes: (AreaShortfall | null)[]): AreaShortfall | null {
  return axes.find((axis) => axis?.kind === 'lower') ?? axes.find((axis) => axis !== null) ?? null;
}

const zoneAxis = (have: Iec, need: Iec) => (ZONE_COVERS.get(have.zone)?.includes(need.zone) ? null : lower('place'));

function groupAxis(have: Iec, need: Iec): AreaShortfall | null {
  if (have.group === null || need.group === null) return notStated('group');
  return GROUP_COVERS.get(have.group)?.includes(need.group) ? null : lower('group');
}

const divisionAxis = (have: Nec, need: Nec) =>
  have.class === need.class && have.division <= need.division ? null : lower('place');

function listedAxis(have: Nec, need: Nec): AreaShortfall | null {
  if (need.class === 3) return null; // Class III has no groups.
  if (have.groups.length === 0 || need.groups.length === 0) return notStated('group');
  return need.groups.every((group) => have.groups.includes(group)) ? null : lower('group');
}

function heatAxis(have: number | null, need: number | null): AreaShortfall | null {
  if (have === null || need === null) return notStated('temperature');
  return have <= need ? null : lower('temperature');
}
