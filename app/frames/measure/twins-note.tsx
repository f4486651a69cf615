import type { Twins } from '@/lib/standards/measured/twins';
import { figure } from '@/lib/units/figure';
import { inchFraction } from '@/lib/units/inch-fraction';
import { MEASURED_WORDS } from './measured-words';

/** A frame of the other family that looks the same, said plainly with what parts them. */
export function TwinsNote({ twins: { nema, iec, left, differences } }: { twins: Twins }) {
  return (
    <div className="problem-list" id="twins">
      <p>
        <b>
          {left === 'both'
            ? `It can still be of either family. NEMA ${nema} and IEC ${iec} look alike, and neither goes in the other’s place as it is.`
            : `It is not ${left === 'NEMA' ? `IEC ${iec}` : `NEMA ${nema}`}, which looks like ${left === 'NEMA' ? `NEMA ${nema}` : `IEC ${iec}`}.`}
        </b>
      </p>
      <ul className="told">
        {differences.map(({ name, nemaMm, iecMm, difference }) => (
          <li key={name}>
            {MEASURED_WORDS[name].label}: {inchFraction(nemaMm)} in is {figure(nemaMm, 3)} mm, not {figure(iecMm, 3)}{' '}
            mm: {figure(Math.abs(difference), 3)} mm apart
            {name === 'shaftDiameterMm' && '. A hub bored for one does not hold the other'}
            {name === 'shaftHeightMm' && (difference > 0 ? ', the NEMA motor higher' : ', the IEC motor higher')}.
          </li>
        ))}
      </ul>
    </div>
  );
}
