import type { FieldName } from './field-name';

/** A label that stands before its value. `value` says how far the value goes; without it, to the next label. */
export interface Label {
  /** Null: read by nobody here, and kept as it stands ("SER. NO. 12345"). */
  field: FieldName | null;
  pattern: RegExp;
  value: RegExp | null;
  /** What follows may say something that is read by itself ("TYPE TEFC"). */
  isOpen?: boolean;
}

const END = String.raw`(?![A-Za-z\u00C0-\u00FF\d])`;
const label = (field: FieldName | null, source: string, value: string | null = null): Label => ({
  field,
  pattern: new RegExp(`(?:${source})${END}`, 'iy'),
  value: value === null ? null : new RegExp(value, 'iy'),
});

export const labels: readonly Label[] = [
  label(
    null,
    String.raw`(?:SERIAL|SER)\.?(?: ?(?:NO|NR|NUMBER|#)\.?)?|(?:FABR(?:IK)?|SERIEN|MASCH)\.?[- ]?(?:NR|NUMMER)\.?|N[UÚ]MERO DE S[EÉ]RIE|NUM[EÉ]RO DE S[EÉ]RIE|MATRICOLA|S/N|SN|MODEL(?: ?(?:NO|NUMBER)\.?)?|MOD\.?|CAT(?:ALOG)?\.?(?: ?NO\.?)?|PART(?: ?NO\.?)?|P/N|MFG\.?|MFR\.?|MADE IN|(?:MFG )?DATE|ID(?: ?NO\.?)?|NO\.|NR\.|N°|SPEC\.?|STYLE|ORDER(?: ?NO\.?)?|YEAR|(?:D\.?E\.?|O\.?D\.?E\.?|N\.?D\.?E\.?|SHAFT END|OPP(?:OSITE)?\.? END)\.? ?(?:BRG|BEARING)S?\.?|BRGS?\.?|BEARINGS?|GREASE|LUBRICANT|SFA|S\.F\.A\.?|S\.?F\.? AMPS|LRA|L\.R\.A\.?|LOCKED ROTOR AMPS|I[AS]/IN|MAX\.? ?(?:KVAR|AMPS)|KVAR|GUAR(?:ANTEED)?\.? ?(?:MIN\.? )?EFF\.?|MIN\.? ?EFF\.?|WK2|INERTIA|PHASE SEQUENCE|MAX\.? CORR\.? KVAR`,
  ),
  label(
    'frame',
    String.raw`(?:NEMA |IEC )?FRAME(?: ?SIZE)?(?: ?NO\.?)?|FR\.?(?: ?SIZE)?|FRM\.?|BAUGR(?:Ö|OE)(?:SS|ß)E|BAUGR\.|CARCASA|CARCASSA|CARCASSE|BOUWGROOTTE`,
  ),
  label(
    'mounting',
    String.raw`MOUNTING|MTG\.?|MOUNT|BAUFORM|FORME?(?= ?(?:IM|[BV]) ?\d)|FORMA(?= ?(?:IM|[BV]) ?\d)`,
    String.raw`(?:IM ?)?(?:[BV] ?\d{1,2}|\d{4})(?: ?/ ?(?:IM ?)?[BV]? ?\d{1,4})*|[FWC]-?\d|[A-Z]+(?:(?: AND |[ -])[A-Z]+)*`,
  ),
  label(
    'design',
    String.raw`NEMA (?:DESIGN|DES\.?)(?: ?LETTER)?|DESIGN(?: ?LETTER)?|DES\.?`,
    String.raw`[A-Z]{1,3}(?![A-Z\d])`,
  ),
  label(
    'codeLetter',
    String.raw`KVA[ -]?CODE|CODE ?LETTER|(?:L\.?R\.?|LOCKED ROTOR) (?:KVA )?CODE|CODE|KVA`,
    String.raw`[A-Z](?![A-Z\d])`,
  ),
  label(
    'insulation',
    INSULATION(),
    String.raw`(?:CLASS |CL\.? ?)?(?:\d{3} ?\(? ?[A-Z] ?\)?|[A-Z](?![A-Z\d])(?: ?/ ?[A-Z](?![A-Z]))?|\d{3})`,
  ),
  label(
    'ambient',
    String.raw`(?:MAX(?:IMUM)?\.? ?)?AMB(?:IENT)?\.?(?: ?TEMP(?:ERATURE)?\.?)?|T ?AMB\.?|TA(?=\s*\d)`,
    String.raw`(?:[+-]? ?\d{1,3}(?: ?[°º]? ?[CF])? ?(?:TO|\.{2,3}|…|/) ?)?[+-]? ?[\dOIl][\d.,OIl]*(?: ?[°º] ?[CF]?| ?DEG\.? ?[CF]?| ?[CF])?(?![A-Z])`,
  ),
  label('enclosure', String.raw`ENCLOSURE|ENCL\.?|ENC\.?`, String.raw`IP ?\d\dK?|[A-Z]+(?:-[A-Z]+)*(?![\d])`),
  label(
    'ip',
    '(?:DEGREE OF |INDICE DE )?PROTECTION|SCHUTZART|(?:GRADO DE )?PROTECCI[OÓ]N|PROTEZIONE',
    String.raw`IP ?[\dX]{2}K?`,
  ),
  label(
    'duty',
    'DUTY(?: ?(?:CYCLE|TYPE))?|BETRIEBSART|SERVICIO|SERVIZIO|TIME(?: ?RATING)?|RATING',
    String.raw`S ?\d{1,2}(?:[ -]?\d{1,3} ?(?:%|MIN\.?))?|CONT(?:INUOUS|\.)?|\d+ ?(?:MIN|HR?|HOURS?)\.?|INT(?:ERMITTENT)?\.?`,
  ),
  label('rotation', String.raw`(?:DIRECTION OF )?ROTATION|ROT\.?|DIR\. ROT\.?`),
  label('terminalBox', String.raw`(?:TERMINAL|CONDUIT|JUNCTION) ?BOX|[JT]-?BOX|ASSEMBLY|ASSY\.?`),
  label('connection', String.raw`CONNECTION|CONN\.?`, '(?:[ΔYD12]|STAR|DELTA|WYE)[ΔYD/ A-Z12-]*'),
  label('maxRpm', String.raw`MAX(?:IMUM)?\.? ?(?:SAFE )?(?:RPM|SPEED)`, String.raw`[\dOIl][\d.,OIl]*(?: ?RPM)?`),
  label(
    'length',
    '(?:OVERALL )?LENGTH|L(?=\\s*=)',
    String.raw`\d[\d.,]*(?: ?[½¼¾⅛⅜⅝⅞]|[ -]\d{1,2}/\d{1,2})? ?(?:MM|IN\.?|")`,
  ),
  label('brake', 'BRAKE', '.*'),
  { ...label(null, String.raw`TYPE|TYP\.?`), isOpen: true },
];

function INSULATION(): string {
  return String.raw`INS(?:UL(?:ATION)?)?\.?(?: ?(?:SYSTEM|CLASS|CL|KL)\.?)*|ISO\.?(?:L\.?)? ?(?:CLASS|CL|KL)?\.?|TH(?:ERM(?:AL)?)?\.? ?(?:CLASS|CL)\.?|I\.CL\.?|W(?:Ä|AE)RMEKL(?:ASSE|\.)|CLASS(?= ?[ABEFHNR](?![A-Z\d]))`;
}
