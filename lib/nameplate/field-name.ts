/** What a nameplate can say that is read here. */
export type FieldName =
  | 'frame'
  | 'frameInType'
  | 'mounting'
  | 'volts'
  | 'hertz'
  | 'power'
  | 'rpm'
  | 'amps'
  | 'phases'
  | 'poles'
  | 'connection'
  | 'pf'
  | 'efficiency'
  | 'serviceFactor'
  | 'design'
  | 'codeLetter'
  | 'enclosure'
  | 'ip'
  | 'insulation'
  | 'ambient'
  | 'duty'
  | 'mass'
  | 'length'
  | 'rotation'
  | 'terminalBox'
  | 'driveDuty'
  | 'constantTorque'
  | 'maxRpm'
  | 'leads'
  | 'auxiliary'
  | 'brake'
  | 'area'
  | 'washdown'
  | 'kind';

/** One thing stamped, as it stood, not yet read. `line` counts from 0; `at` is its place in the line. */
export interface Fact {
  field: FieldName;
  text: string;
  line: number;
  at: number;
}
