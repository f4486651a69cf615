import { describe, expect, test } from 'vitest';
import { openFindings } from '@/lib/job/open-findings';
import type { Predicted } from '@/lib/job/predicted';
import { type About, isRaised } from '@/lib/job/reading-finding';
import { readingFindings } from '@/lib/job/reading-findings';
import { NO_READINGS, type Readings } from '@/lib/job/readings';
import { predicted } from './easy-job';

interface Row {
  name: string;
  read: Partial<Readings>;
  held?: Partial<Predicted>;
  about: About;
  grade: string;
  need?: number | string | null;
  says?: RegExp;
  source: string;
}

const IEEE = 'IEEE 43-2013 table 3: 5 MΩ for random-wound below 1 kV, 100 MΩ for form-wound after about 1970';
const NEC = 'NEC 430.6(A): the overload is set by the plate';
const MG1 = 'NEMA MG 1 12.47: amps at rated load within 10 % of the plate';
const TEN = 'a trade journal and an instrument’s manual: above 10 % the supply is put right or the motor derated';
const TOOL = 'an alignment instrument maker’s table, short flexible couplings, acceptable';
const COMMON = 'common practice, no source';

const ROWS: readonly Row[] = [
  {
    name: '5 MΩ is enough at 460 V',
    read: { insulationMohm: 5 },
    about: 'insulation',
    grade: 'ok',
    need: 5,
    source: IEEE,
  },
  { name: '4.9 MΩ is not', read: { insulationMohm: 4.9 }, about: 'insulation', grade: 'block', need: 5, source: IEEE },
  {
    name: '90 MΩ is not enough at 4 kV',
    read: { insulationMohm: 90 },
    held: { windingVolts: 4000 },
    about: 'insulation',
    grade: 'block',
    need: 100,
    source: IEEE,
  },
  {
    name: '50 MΩ cannot be judged with the volts unknown',
    read: { insulationMohm: 50 },
    held: { windingVolts: null },
    about: 'insulation',
    grade: 'check',
    need: null,
    source: IEEE,
  },
  {
    name: '120 MΩ is enough whatever the volts',
    read: { insulationMohm: 120 },
    held: { windingVolts: null },
    about: 'insulation',
    grade: 'ok',
    source: IEEE,
  },
  {
    name: 'the wrong way round stops the job',
    read: { rotation: 'wrong' },
    about: 'rotation',
    grade: 'block',
    need: 'right',
    says: /any two/,
    source: COMMON,
  },
  { name: 'the right way round is right', read: { rotation: 'right' }, about: 'rotation', grade: 'ok', source: COMMON },
  { name: 'set to the plate', read: { overloadA: 6.6 }, about: 'overload', grade: 'ok', need: 6.6, source: NEC },
  { name: 'set above the plate', read: { overloadA: 7 }, about: 'overload', grade: 'check', need: 6.6, source: NEC },
  { name: 'set below what it runs at', read: { overloadA: 5.5 }, about: 'overload', grade: 'note', source: COMMON },
  {
    name: 'in the delta 0.58 of the plate is the plate',
    read: { overloadA: 6.6 },
    held: { overload: { settingA: 3.828, where: 'phase', lineA: 6.6, phaseA: 3.828, isInDial: true } },
    about: 'overload',
    grade: 'check',
    need: 3.828,
    source: '1/√3 = 0.577: the share of the line amps in a leg of a delta',
  },
  {
    name: 'where the overload stands is unknown',
    read: { overloadA: 5 },
    held: { overload: { settingA: null, where: 'unknown', lineA: 6.6, phaseA: 3.828, isInDial: null } },
    about: 'overload',
    grade: 'check',
    need: null,
    source: 'unknown is never a pass',
  },
  {
    name: 'above the line amps it is too high wherever it stands',
    read: { overloadA: 9 },
    held: { overload: { settingA: null, where: 'unknown', lineA: 6.6, phaseA: 3.828, isInDial: null } },
    about: 'overload',
    grade: 'check',
    need: 6.6,
    source: NEC,
  },
  {
    name: 'the plate’s amps are unknown',
    read: { overloadA: 9 },
    held: { overload: { settingA: null, where: 'line', lineA: null, phaseA: null, isInDial: null } },
    about: 'overload',
    grade: 'check',
    need: null,
    source: 'unknown is never a pass',
  },
  {
    name: 'a soft foot of 0.05 mm stands',
    read: { softFootMm: 0.05 },
    about: 'soft-foot',
    grade: 'ok',
    need: 0.06,
    source: TOOL,
  },
  {
    name: 'a soft foot of 0.1 mm does not',
    read: { softFootMm: 0.1 },
    about: 'soft-foot',
    grade: 'check',
    source: TOOL,
  },
  {
    name: '0.09 mm of offset at 1500 rpm',
    read: { offsetMm: 0.09 },
    held: { motorRpm: 1450 },
    about: 'offset',
    grade: 'ok',
    need: 0.09,
    source: TOOL,
  },
  {
    name: '0.1 mm of offset at 1500 rpm',
    read: { offsetMm: 0.1 },
    held: { motorRpm: 1450 },
    about: 'offset',
    grade: 'check',
    need: 0.09,
    source: TOOL,
  },
  {
    name: '1755 rpm takes the stricter row of 3000 rpm',
    read: { offsetMm: 0.07 },
    about: 'offset',
    grade: 'check',
    need: 0.06,
    source: TOOL,
  },
  {
    name: 'the gap at 3000 rpm',
    read: { gapMmPer100: 0.05 },
    held: { motorRpm: 2950 },
    about: 'gap',
    grade: 'check',
    need: 0.04,
    source: TOOL,
  },
  {
    name: 'the speed is unknown',
    read: { gapMmPer100: 0.01 },
    held: { motorRpm: null },
    about: 'gap',
    grade: 'check',
    need: null,
    source: 'unknown is never a pass',
  },
  {
    name: 'as predicted',
    read: { amps: [5.7, 5.7, 5.8] },
    about: 'running-current',
    grade: 'ok',
    need: 5.7,
    source: MG1,
  },
  {
    name: '10 % above the prediction is still as predicted',
    read: { amps: [6.27, 6.27, 6.27] },
    about: 'running-current',
    grade: 'ok',
    source: MG1,
  },
  {
    name: 'more than 10 % above',
    read: { amps: [6.4, 6.4, 6.4] },
    about: 'running-current',
    grade: 'check',
    need: 5.7,
    says: /More than/,
    source: MG1,
  },
  {
    name: 'more than a quarter below',
    read: { amps: [4, 4.1, 4.2] },
    about: 'running-current',
    grade: 'check',
    says: /Less than/,
    source: COMMON,
  },
  {
    name: 'one phase above plate × service factor',
    read: { amps: [7, 7.1, 7.6] },
    about: 'running-current',
    grade: 'block',
    need: 7.59,
    source: 'NEMA MG 1 12.51: 6.6 A × 1.15 = 7.59 A',
  },
  {
    name: 'no prediction is no pass',
    read: { amps: [5.7, 5.7, 5.7] },
    held: { amps: null, whyNoAmps: 'The pump’s power is not known.' },
    about: 'running-current',
    grade: 'check',
    need: null,
    says: /cannot be judged: The pump’s power is not known\./,
    source: 'unknown is never a pass',
  },
  {
    name: 'nor with the plate unknown as well',
    read: { amps: [5.7, null, null] },
    held: { amps: null, whyNoAmps: 'No plate.', plateA: null },
    about: 'running-current',
    grade: 'check',
    need: null,
    source: 'unknown is never a pass',
  },
  {
    name: 'even',
    read: { amps: [50, 49, 51] },
    about: 'current-unbalance',
    grade: 'ok',
    need: 10,
    source: 'a pump maker’s manual: 2 %, under its 5 %',
  },
  {
    name: '8 % is worth knowing',
    read: { amps: [51, 46, 53] },
    about: 'current-unbalance',
    grade: 'note',
    source: 'the same manual: 8 %, over its 5 %',
  },
  {
    name: '9.4 % is still under the limit',
    read: { amps: [33, 29, 34] },
    about: 'current-unbalance',
    grade: 'note',
    source: TEN,
  },
  { name: '12 % is over it', read: { amps: [44, 50, 56] }, about: 'current-unbalance', grade: 'check', source: TEN },
  {
    name: 'a dead line',
    read: { amps: [0, 9, 9] },
    about: 'current-unbalance',
    grade: 'block',
    says: /L1 carries nothing/,
    source: COMMON,
  },
];

test.each(ROWS)('$about: $name', ({ read, held, about, grade, need, says, source }) => {
  const findings = readingFindings({ ...NO_READINGS, ...read }, predicted(held));
  const finding = findings.find((one) => one.about === about);
  expect(finding?.grade, source).toBe(grade);
  if (need !== undefined) expect(finding?.need).toEqual(typeof need === 'number' ? expect.closeTo(need, 6) : need);
  if (says) expect(finding?.says).toMatch(says);
});

test('of what was not read nothing is said', () => {
  expect(readingFindings(NO_READINGS, predicted())).toEqual([]);
  expect(readingFindings({ ...NO_READINGS, amps: [5.7, 5.7, null] }, predicted()).map(({ about }) => about)).toEqual([
    'running-current',
  ]);
  expect(readingFindings({ ...NO_READINGS, amps: [5.7, null, null] }, predicted({ phases: 1 }))).toHaveLength(1);
});

describe('what stands open', () => {
  const said = (amps: Readings['amps'], held: Partial<Predicted> = {}) =>
    readingFindings({ ...NO_READINGS, amps }, predicted(held));
  const [high, good] = [said([7, 7, 7]), said([5.7, 5.7, 5.7])];
  const unjudged = said([5.7, 5.7, 5.7], { amps: null, whyNoAmps: 'Not known.' });

  test('a current out of its band is raised, and a later one inside clears it', () => {
    expect(openFindings([high]).map(({ about }) => about)).toEqual(['running-current']);
    expect(openFindings([high, good])).toEqual([]);
    expect(openFindings([good, high])).toHaveLength(1);
  });

  test('a later reading that cannot be judged clears nothing, and alone raises nothing', () => {
    expect(openFindings([high, unjudged])).toHaveLength(1);
    expect(unjudged.filter(isRaised)).toEqual([]);
  });

  test('a reading of another thing clears nothing', () => {
    expect(openFindings([high, readingFindings({ ...NO_READINGS, insulationMohm: 200 }, predicted())])).toHaveLength(1);
  });
});
