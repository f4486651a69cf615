import { LETTER } from '@/lib/units/read-volts';
import { areaWords } from './area-words';
import type { FieldName } from './field-name';

const IEC_FRAME = '(?:63|71|80|90|100|112|132|160|180|200|225|250|280|315|355)(?:S/M|M/L|S|M|L)(?:-[2468]P?)?';

const VOLTS = String.raw`\d[\d.,]*(?: ?- ?\d[\d.,]*)? ?V`;

/** What is stamped without a label and can be nothing else. */
export const bareWords: readonly { field: FieldName; pattern: RegExp }[] = [
  ...areaWords,
  // A frame that nothing else on a plate looks like: a T, TS, U, JM ... frame of NEMA, a height and S, M or L of IEC.
  bare('frame', `IEC ${IEC_FRAME}`),
  bare('frame', String.raw`(?:NEMA )?(?:1[48]|2[158]|3[26]|4[04])\d(?:/\d)?(?:T|U|J[MP])[A-Z]{0,2}V?`),
  bare('frame', IEC_FRAME),
  bare('frameInType', `[A-Z]{1,4}${IEC_FRAME}`),
  bare('rpm', String.raw`\d[\d.,]{2,5} ?(?:RPM )?\( ?\d{1,2} ?P(?:OLES?)?\.? ?\)`),
  bare('volts', `${VOLTS} ?${LETTER} ?/ ?${VOLTS} ?${LETTER}`),
  bare('phases', String.raw`[13] ?(?:~|φ|-?PHASE|-?PH\.?)|(?:~|φ) ?[13](?!\d)|(?:SINGLE|THREE)[ -]PHASE`),
  bare('ip', String.raw`IP[ -]?[\dX]{2}K?`),
  bare('mounting', String.raw`IM ?(?:[BV] ?\d{1,2}|\d{4})(?: ?/ ?(?:IM ?)?(?:[BV] ?)?\d{1,4})*`),
  bare('mounting', String.raw`[BV](?:3|5|6|7|8|14|15|35|34|1|18|19|36)(?: ?/ ?[BV]?\d{1,2})*`),
  bare('terminalBox', 'F-?[123]'),
  bare('enclosure', 'TEFC|TENV|TEBC|TEAO|TEXP|XPFC|XPNV|ODP|WPII|WPI|XP'),
  bare('duty', String.raw`S(?:[1-9]|10)(?:[ -]\d{1,3} ?(?:%|MIN))?|CONT(?:INUOUS)?\.?(?: ?DUTY)?`),
  bare(
    'connection',
    '(?:ΔΔ|YY|[1-9]?Δ|[12]?Y|[12]?D|STAR|DELTA|WYE)(?: ?/ ?(?:ΔΔ|YY|[1-9]?Δ|[12]?Y|[12]?D|STAR|DELTA|WYE))?',
  ),
  bare('driveDuty', 'INVERTER[ -]DUTY|(?:NEMA )?MG ?-?1,? PART 3[01]'),
  bare(
    'constantTorque',
    String.raw`(?:CT|CONST(?:ANT|\.)? TORQUE):? ?\d{1,4} ?: ?1|\d{1,4} ?: ?1 (?:CT|CONST(?:ANT|\.)? TORQUE)`,
  ),
  bare('ambient', String.raw`\d{1,3} ?[°º]? ?[CF] ?(?:MAX\.? ?)?AMB(?:IENT)?\.?`),
  bare('washdown', '(?:STAINLESS(?: STEEL)? |PAINTED |WHITE )?WASH-?DOWN(?: DUTY)?'),
  bare('efficiency', String.raw`IE ?[1-5] ?[-(] ?\d{2}[.,]\d{1,2} ?%?\)?`),
  bare(
    'auxiliary',
    'PTC|THERMISTORS?|THERMOSTATS?|HEATERS?|ENCODER|RTDS?|PT ?100|INSULATED BEARINGS?|SHAFT GROUND(?:ING)?(?: RING)?',
  ),
];

function bare(field: FieldName, source: string): { field: FieldName; pattern: RegExp } {
  return { field, pattern: new RegExp(`(?:${source})(?![A-Za-z\\u00C0-\\u00FF\\d])`, 'iy') };
}
