import type { Motor } from '@/lib/plant/motor';
import { codeLetter as bandOf } from '@/lib/standards/code-letter';
import { currentOfDesign } from '@/lib/standards/locked-rotor-current';
import { figure } from '@/lib/units/figure';
import { figuresOf } from '@/lib/units/figures-of';
import { hpOfKw } from '@/lib/units/power';
import type { Doubt } from '../doubt';

/**
 * Can the code letter be that of the design letter and of the amps? kVA per hp with locked rotor. A design B, C or D has
 * a greatest locked-rotor current; and with the rotor held a cage takes several times its full-load current. Not asked
 * without a code letter, nor of a wound rotor, nor where no row tells power with its hertz and volts.
 */
export function codeLetter(motor: Motor): Doubt | null {
  const { codeLetter: letter, design, phases, kind } = motor;
  const band = letter === null ? null : bandOf(letter);
  if (letter === null || band === null || phases !== 3 || kind === 'wound-rotor') return null;
  const line = motor.ratings.findIndex((one) => one.kw !== null && one.volts !== null && one.hertz === MAINS_HZ);
  const row = motor.ratings[line];
  if (!row || row.kw === null || row.volts === null) return null;

  const hp = hpOfKw(row.kw);
  const printed = `code letter ${letter} is ${band.to === null ? `${figure(band.from)} kVA/hp and more` : `${figure(band.from)} to ${figure(band.to)} kVA/hp`}`;
  const about = { rule: 'code-letter', thing: 'motor', field: 'codeLetter', have: letter, unit: 'kVA/hp' } as const;
  const most = design === null ? null : currentOfDesign(design, row.kw, row.volts);
  if (most !== null) {
    const kva = (Math.sqrt(3) * row.volts * most.amps) / 1000 / hp;
    if (band.from > kva * ROUNDED)
      return {
        ...about,
        grade: band.from > kva * FAR ? 'wrong' : 'doubtful',
        expected: Number(kva.toPrecision(3)),
        says: `√3 × ${figure(row.volts)} V × ${figure(most.amps, 0)} A / ${figure(hp)} hp = ${figure(kva)} kVA/hp at most for design ${design}; ${printed}.`,
        cite: `${most.cite}; ${band.cite}`,
        figures: figuresOf({ letter, design, kw: row.kw }),
      };
  }
  if (row.amps === null || band.to === null) return null;
  const full = (Math.sqrt(3) * row.volts * row.amps) / 1000 / hp;
  if (band.to >= full * LEAST_INRUSH) return null;
  return {
    ...about,
    grade: band.to < full ? 'wrong' : 'doubtful',
    expected: Number((full * LEAST_INRUSH).toPrecision(3)),
    says: `√3 × ${figure(row.volts)} V × ${figure(row.amps)} A / ${figure(hp)} hp = ${figure(full)} kVA/hp at full load; ${printed}: ${figure(band.to / full, 1)} times that with the rotor held, where a cage takes ${LEAST_INRUSH} times and more.`,
    cite: `${band.cite}; least inrush: common practice, no source`,
    figures: figuresOf({ letter, volts: row.volts, amps: row.amps, kw: row.kw }),
  };
}

/** The tables of code and design letters are for 60 Hz. */
const MAINS_HZ = 60;
/** The printed currents are rounded to whole amperes. */
const ROUNDED = 1.01;
const FAR = 1.25;
const LEAST_INRUSH = 2.5;
