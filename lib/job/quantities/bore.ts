import type { Context } from '@/lib/matching/context';
import type { HubChange } from '@/lib/matching/context/hub-change';
import type { Finding } from '@/lib/matching/finding';
import { isSameLength } from '@/lib/matching/mount/same-length';
import { figure } from '@/lib/units/figure';
import { type Quantity, readingOf } from './quantity';

const NAMES: Readonly<Record<HubChange['kind'], string>> = {
  none: 'Hub bore',
  bushing: 'Hub bushing, bored',
  sleeve: 'Sleeve, bored',
  rebore: 'Hub rebored to',
  'new-hub': 'New hub, bored',
  'new-sheave': 'New sheave, bored',
  'quill-bushing': 'Reducer bushing, bored',
  impossible: 'Hub bore',
  unknown: 'Hub bore',
};

/** The bore for the new shaft, against what is there. */
export function bore({ seat, fit, hub }: Context, findings: readonly Finding[]): Quantity {
  const have = fit.dimensions.shaftDiameterMm.value;
  const need = seat.shaftDiameter.value;
  const about = { id: 'bore', name: seat.input === 'hub' ? NAMES[hub.kind] : PLACES[seat.input] } as const;
  if (have === null || need === null || hub.kind === 'unknown' || hub.kind === 'impossible')
    return { ...about, value: null, detail: readingOf(findings, 'shaft-diameter') };
  const fits = fit.shaftFit === null ? '' : `, shaft ${fit.shaftFit}`;
  return hub.kind === 'none'
    ? { ...about, value: mm(have), detail: `as it is${fits}` }
    : { ...about, value: mm(have), detail: `in place of ${mm(need)}${fits}` };
}

const PLACES = { quill: 'Quill bore', 'pump-shaft': 'Pump shaft' } as const;

/** The key in the new shaft, against the hub's keyway. Null where shafts of this kind carry none. */
export function keySection({ seat, fit, hub }: Context, findings: readonly Finding[]): Quantity | null {
  const asked = readingOf(findings, 'key');
  if (asked === null) return null;
  const have = fit.dimensions.keyWidthMm.value;
  const need = seat.keyWidth.value;
  const about = { id: 'key', name: 'Key, width' } as const;
  if (have === null) return { ...about, value: null, detail: asked };
  if (hub.kind !== 'none') return { ...about, value: mm(have), detail: 'new, with the new bore' };
  if (need === null) return { ...about, value: mm(have), detail: asked };
  return {
    ...about,
    value: mm(have),
    detail: isSameLength(have, need) ? 'as it is' : `stepped: ${mm(need)} in the hub`,
  };
}

const mm = (value: number) => `${figure(value, 3)} mm`;
