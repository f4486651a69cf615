import { CRITICALITIES } from '@/lib/plant/site-settings';
import type { KnownArea } from '@/lib/register/queries/areas';
import { SelectField } from '../look/field';

/** Asks for an area of the site. `none`: the value that asks for what stands in no area, where that can be asked. */
export function AreaField({
  areas,
  areaId,
  none,
}: {
  areas: readonly KnownArea[];
  areaId: string | null;
  none?: string;
}) {
  const named = areas.map((area) => ({ value: area.areaId, words: area.name }));
  return (
    <SelectField
      label="Area"
      name="area"
      empty="All areas"
      options={none === undefined ? named : [...named, { value: none, words: 'of no area' }]}
      defaultValue={areaId ?? ''}
    />
  );
}

const CRITICAL = CRITICALITIES.map((value) => ({ value: String(value), words: String(value) }));

/** Asks how much it matters that a set stands: 1 stops the plant ... 4 can wait. */
export function CriticalityField({ criticality }: { criticality: number | null }) {
  return (
    <SelectField
      label="Criticality"
      name="criticality"
      empty="Any"
      options={CRITICAL}
      defaultValue={criticality === null ? '' : String(criticality)}
    />
  );
}
