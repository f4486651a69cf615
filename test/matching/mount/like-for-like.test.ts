import { expect, test } from 'vitest';
import { contextOf } from '@/lib/matching/context';
import { criteria } from '@/lib/matching/criteria';
import { defaultSettings } from '@/lib/matching/default-settings';
import { CRITERIA, type Finding, GRADES } from '@/lib/matching/finding';
import type { MotorInput } from '@/lib/plant/motor';
import { motor, set } from '../easy';

type SetParts = NonNullable<Parameters<typeof set>[0]>;

/** The questions of the mount are the first eleven. */
const MOUNT = CRITERIA.slice(0, 11);
const mountCriteria = criteria.filter(([id]) => MOUNT.includes(id));

function mountFindings(ofSet: SetParts, ofMotor: Partial<MotorInput>): Finding[] {
  const pumpSet = set(ofSet);
  const candidate = motor(ofMotor);
  const context = contextOf(pumpSet, candidate, { settings: defaultSettings, asOf: null });
  return mountCriteria.flatMap(([, ask]) => ask(pumpSet, candidate, context) ?? []);
}

const rank = (finding: Finding | undefined) => (finding === undefined ? -1 : GRADES.indexOf(finding.grade));

const places = {
  foot: { coupling: { type: 'coupling', hub: { lengthMm: 40 } } },
  belt: { coupling: { type: 'belt', hub: null } },
  face: { mounting: 'face', coupling: { type: 'gear', hub: null } },
  both: { mounting: 'foot-and-face', coupling: { type: 'gear', hub: null } },
  close: { mounting: 'face', coupling: { type: 'close-coupled', hub: null } },
} satisfies Record<string, SetParts>;

const NEMA = [
  '56',
  '56H',
  '143T',
  '182T',
  '184T',
  '182/4T',
  '213',
  '215T',
  '254U',
  '256T',
  '284T',
  '326T',
  '365T',
  '405T',
  '445T',
];
const IEC = ['80', '90S', '112M', '132S/M', '160L', '200L', '225M', '280S', '315M'];
const C_FACES = ['56C', '145TC', '184TC', '184TCH', '215TC', '256TC', '286TC'];

// The property holds for any frame: what stood there fits there.
test.each([
  ...NEMA.map((frame) => [frame, null, 'foot'] as const),
  ...NEMA.map((frame) => [frame, null, 'belt'] as const),
  ...['286TS', '324TS'].map((frame) => [frame, null, 'foot'] as const),
  ...IEC.map((frame) => [frame, 'IM B3', 'foot'] as const),
  ...IEC.map((frame) => [frame, 'IM B35', 'foot'] as const),
  ...IEC.map((frame) => [frame, 'IM B5', 'face'] as const),
  ...IEC.map((frame) => [frame, 'IM B35', 'both'] as const),
  ...['80', '90S', '112M', '132S', '160M'].map((frame) => [frame, 'IM B14', 'face'] as const),
  ...C_FACES.map((frame) => [frame, null, 'face'] as const),
  ...C_FACES.map((frame) => [frame, 'face', 'face'] as const),
  ...['143JM', '184JM', '215JP', '254JM', '56J'].map((frame) => [frame, null, 'close'] as const),
])('an identical %s (%s) needs neither work nor check, held by %s', (frame, mounting, place) => {
  const same = { frame, mounting, codeLetter: mounting?.startsWith('IM') ? null : ('J' as const) };
  const found = mountFindings({ ...places[place], failed: { id: 'M-0', poles: 4, ...same } }, { poles: 4, ...same });
  expect(found.filter(({ grade }) => grade !== 'ok' && grade !== 'note')).toEqual([]);
});

/** Measured as well as framed, so that each figure can be taken away by itself. */
const told = {
  frame: null,
  mounting: 'IM B3',
  measured: {
    shaftHeightMm: 114.3,
    holesAcrossMm: 190.5,
    holesAlongMm: 139.7,
    holeMm: 10.4,
    holeToShoulderMm: 69.85,
    shaftDiameterMm: 28.575,
    shaftLengthMm: 69.85,
    keyWidthMm: 6.35,
  },
} satisfies Partial<MotorInput>;

test.each([
  ['shaftHeightMm', 'shaft-height'],
  ['holesAcrossMm', 'foot-holes'],
  ['holesAlongMm', 'foot-holes'],
  ['holeMm', 'foot-holes'],
  ['holeToShoulderMm', 'shaft-position'],
  ['shaftLengthMm', 'shaft-position'],
  ['shaftLengthMm', 'shaft-length'],
  ['shaftDiameterMm', 'shaft-diameter'],
  ['keyWidthMm', 'key'],
] as const)('a motor without %s never passes %s', (figure, criterion) => {
  const at = (measured: Partial<MotorInput['measured']>) =>
    mountFindings({}, { ...told, measured }).find((one) => one.criterion === criterion);
  expect(rank(at(told.measured))).toBe(GRADES.indexOf('ok'));
  expect(rank(at({ ...told.measured, [figure]: null }))).toBeGreaterThanOrEqual(GRADES.indexOf('check'));
});

const seatTold = {
  failed: null,
  seat: { shaftHeightMm: 114.3, holesAcrossMm: 190.5, holesAlongMm: 139.7, boltMm: 9.5, holeToShaftEndMm: 139.7 },
  coupling: { hub: { boreMm: 28.575, keyWidthMm: 6.35, lengthMm: 60 } },
} satisfies SetParts;

test.each([
  ['shaftHeightMm', 'shaft-height'],
  ['holesAcrossMm', 'foot-holes'],
  ['holesAlongMm', 'foot-holes'],
  ['boltMm', 'foot-holes'],
  ['holeToShaftEndMm', 'shaft-position'],
] as const)('a seat without %s lets no motor pass %s', (figure, criterion) => {
  const at = (seat: object) => mountFindings({ ...seatTold, seat }, {}).find((one) => one.criterion === criterion);
  expect(rank(at(seatTold.seat))).toBe(GRADES.indexOf('ok'));
  expect(rank(at({ ...seatTold.seat, [figure]: null }))).toBeGreaterThanOrEqual(GRADES.indexOf('check'));
});

test.each([
  ['boreMm', 'shaft-diameter'],
  ['keyWidthMm', 'key'],
] as const)('a hub without %s lets no motor pass %s', (figure, criterion) => {
  const at = (hub: object) =>
    mountFindings({ ...seatTold, coupling: { hub } }, {}).find((one) => one.criterion === criterion);
  expect(rank(at(seatTold.coupling.hub))).toBe(GRADES.indexOf('ok'));
  expect(rank(at({ ...seatTold.coupling.hub, [figure]: null }))).toBeGreaterThanOrEqual(GRADES.indexOf('check'));
});

test('a motor of which nothing is known passes no question of the mount that is asked', () => {
  for (const finding of mountFindings({}, { frame: null }))
    expect(finding).toMatchObject({ grade: 'check', by: 'reading' });
});

// A transition base cures height, foot holes and shaft position at once: MG 1 4.4.1 gives the 145T all three to cure.
test('one transition base is one piece of work, whatever it cures', () => {
  const works = mountFindings({ base: { transitionBase: true } }, { frame: '145T' }).flatMap(
    ({ work }) => work?.id ?? [],
  );
  expect(works).toEqual(['transition-base', 'transition-base', 'transition-base', 'new-hub']);
});

test('the questions of the mount stand first, in the table’s order', () => {
  expect(criteria.slice(0, 11).map(([id]) => id)).toEqual(MOUNT);
});
