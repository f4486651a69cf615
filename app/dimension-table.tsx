import type { Dimension, DimensionName, Face } from '@/lib/standards/dimension';
import { DIMENSION_NAMES } from '@/lib/standards/dimension';
import { figure } from '@/lib/units/figure';
import { inchesOfMm } from '@/lib/units/length';
import { DataTable } from './look/data-table';
import { Facts } from './look/facts';
import { SectionHead } from './look/section-head';

/** Every dimension with its tolerance and where it comes from. What is not known says so. */
export function DimensionTable({ dimensions }: { dimensions: Partial<Record<DimensionName, Dimension>> }) {
  const told = DIMENSION_NAMES.flatMap((name) => {
    const dimension = dimensions[name];
    return dimension === undefined ? [] : [{ name, dimension }];
  });
  return (
    <DataTable name="Dimensions">
      <thead>
        <tr>
          <th scope="col">Dimension</th>
          <th scope="col" className="num">
            mm
          </th>
          <th scope="col" className="num">
            in
          </th>
          <th scope="col" className="num">
            Limits, mm
          </th>
        </tr>
      </thead>
      {told.map(({ name, dimension }) => (
        <tbody key={name}>
          <tr>
            <th scope="row">{DIMENSION_WORDS[name]}</th>
            <td className="num">{valueText(dimension, (mm) => figure(mm, 3))}</td>
            <td className="num">{valueText(dimension, (mm) => figure(inchesOfMm(mm), 3))}</td>
            <td className="num">{limitsText(dimension)}</td>
          </tr>
          <tr className="source">
            <td className="label" colSpan={4}>
              {sourceText(dimension)}
            </td>
          </tr>
        </tbody>
      ))}
    </DataTable>
  );
}

/** The face, figure by figure, and where they come from. */
export function FaceFacts({ face }: { face: Omit<Face, 'status'> }) {
  const mm = (value: number | null) => (value === null ? 'not known' : `${figure(value, 3)} mm`);
  return (
    <section>
      <SectionHead title="Face" aside={face.name} />
      <Facts
        rows={[
          { label: 'Pitch circle', value: mm(face.pitchCircleMm) },
          { label: 'Spigot', value: mm(face.spigotMm) },
          { label: 'Outside diameter', value: mm(face.outsideMm) },
          { label: 'Holes', value: holesText(face) },
          { label: 'Shaft shoulder to the face', value: mm(face.shoulderToFaceMm) },
          { label: 'Known from', value: face.cite },
        ]}
      />
      {face.optional && (
        <p className="label pt-2">The standard does not fix this face on this frame: it is a choice.</p>
      )}
    </section>
  );
}

const DIMENSION_WORDS: Record<DimensionName, string> = {
  shaftHeightMm: 'Shaft height',
  holesAcrossMm: 'Foot holes across',
  holesAlongMm: 'Foot holes along',
  footHoleMm: 'Foot hole',
  holeToShoulderMm: 'Drive-end holes to shoulder',
  shaftDiameterMm: 'Shaft diameter',
  shaftLengthMm: 'Shaft length',
  keyWidthMm: 'Key width',
};

function valueText({ value, alternatives }: Dimension, text: (mm: number) => string) {
  if (value === null) return <abbr title="not known">?</abbr>;
  return [value, ...alternatives].map(text).join(' or ');
}

function limitsText({ value, plus, minus }: Dimension): string {
  if (value === null || (plus === null && minus === null)) return '';
  const upper = plus === null ? 'no upper limit' : `+${figure(plus, 3)}`;
  const lower = minus === null ? 'no lower limit' : minus < 0 ? `+${figure(-minus, 3)}` : `−${figure(minus, 3)}`;
  return `${upper}, ${lower}`;
}

/** The clause, which also tells how it was read; or that a person's tape told it. */
const sourceText = ({ origin, cite }: Dimension): string => cite ?? (origin === 'unknown' ? 'not known' : origin);

function holesText({ holes, hole }: Pick<Face, 'holes' | 'hole'>): string {
  const count = holes === null ? 'not known how many' : String(holes);
  if (hole === null) return `${count}, size not known`;
  return 'throughMm' in hole ? `${count}, through, Ø${figure(hole.throughMm)} mm` : `${count}, tapped ${hole.thread}`;
}
