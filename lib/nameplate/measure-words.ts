import type { FieldName } from './field-name';

/** A word that names a quantity, before its figure ("HP 5") or after it ("5 HP"). */
export interface MeasureWord {
  field: FieldName;
  pattern: RegExp;
  /** What is written after the figure so that its reader knows the unit. */
  unit: string;
}

const word = (field: FieldName, unit: string, source: string, flags = 'iy'): MeasureWord => ({
  field,
  unit,
  pattern: new RegExp(`(?:${source})(?![A-Za-z\\u00C0-\\u00FF])`, flags),
});

/** Longest first where one begins another. */
export const measureWords: readonly MeasureWord[] = [
  word(
    'volts',
    '',
    String.raw`(?:U ?)?[\[(]V[\])]|(?:RATED )?VOLTAGE|(?:NENN)?SPANNUNG|TENSI[OÓ]NE?|SPANNING|VOLTS?|VAC|V ?~`,
  ),
  { field: 'volts', unit: '', pattern: /V(?=(?:YY|[YDyd])(?![A-Za-z]))/y },
  word('volts', '', String.raw`V(?:\.(?!\d))?`),
  word(
    'hertz',
    '',
    String.raw`(?:f ?)?[\[(]HZ[\])]|FREQUENCY|FREQUENZA?|FR[EÉ]QUENCE|FRECUENCIA|FREQUENTIE|FREQ\.?|HERTZ|HZ\.?|CYCLES?|CYC?\.?`,
  ),
  word('power', 'hp', String.raw`HORSEPOWER|(?:P ?)?[\[(]HP[\])]|H\.P\.?|HP\.?`),
  word('power', 'PS', String.raw`PS|CV|KM(?=\s|$)`),
  word('power', 'PS', 'ch', 'y'),
  word('power', 'kW', String.raw`(?:P[2nN]? ?)?[\[(]KW[\])]|KILOWATTS?|KW\.?`),
  word(
    'power',
    '',
    'RATED (?:POWER|OUTPUT)|(?:NENN)?LEISTUNG|PUISSANCE|POTENCIA|POTENZA|VERMOGEN|POWER(?! ?FACTOR)|OUTPUT|P2|PN',
  ),
  word('power', 'W', 'WATTS?'),
  word('power', 'W', 'W', 'y'),
  word(
    'rpm',
    '',
    String.raw`(?:n ?)?[\[(](?:RPM|MIN ?\^?-1|R/MIN|1/MIN)[\])]|R\.P\.M\.?|RPM\.?|UPM|MIN ?\^?-1|(?:R|REV|TR|T|U|1)\.?/MIN\.?|/MIN|(?:F\.?L\.? |RATED )?SPEED|(?:NENN)?DREHZAHL|VITESSE|VELOCIDAD|VELOCIT[AÀ]|TOERENTAL|GIRI|(?:G|OBR|OMW)\.?/MIN\.?|T/MN`,
  ),
  word(
    'amps',
    '',
    String.raw`(?:I ?)?[\[(]A[\])]|F\.L\.A\.?|FLA|F\.?L\.? ?AMPS|FULL LOAD AMPS|RATED AMPS|AMPERES?|AMPS?\.?|(?:RATED )?CURRENT|(?:NENN)?STROM|COURANT|CORRIENTE|CORRENTE|STROOM`,
  ),
  word('amps', '', String.raw`I[nN]|In|A(?:\.(?!\d))?`, 'y'),
  word('phases', '', String.raw`PHASES?|PH\.?|φ|~`),
  word(
    'pf',
    '',
    String.raw`COS ?[φϕ]|COS ?PHI|P\.F\.?|PF|POWER ?FACTOR|LEISTUNGSFAKTOR|FACTEUR DE PUISSANCE|FACTOR DE POTENCIA|FATTORE DI POTENZA|COS\.?`,
  ),
  word(
    'efficiency',
    '',
    String.raw`(?:NEMA )?NOM(?:INAL)?\.? ?EFF(?:ICIENCY)?\.?|F\.?L\.? ?EFF\.?|EFF(?:ICIENCY)?\.?(?: ?[\[(]?%[\])]?)?|η(?: ?[\[(]?%[\])]?)?|ETA|WIRKUNGSGRAD|RENDEMENT|RENDIMIENTO|RENDIMENTO`,
  ),
  word('serviceFactor', '', String.raw`SERVICE ?FACTOR|S\.F\.?|SF\.?`),
  word('poles', '', String.raw`(?:NO\.? OF )?POLES?|POL\.|(?<=\d ?-?)P`),
  word('mass', 'kg', String.raw`KGS?\.?`),
  word('mass', 'lb', String.raw`LBS?\.?|POUNDS?`),
  word('mass', '', String.raw`(?:NET )?WEIGHT|WT\.?|MASSE?|GEWICHT|POIDS|PESO`),
  word('leads', '', 'LEADS?'),
];
