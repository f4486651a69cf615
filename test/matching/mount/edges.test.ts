import { expect, test } from 'vitest';
import { contextOf } from '@/lib/matching/context';
import { criteria } from '@/lib/matching/criteria';
import { defaultSettings } from '@/lib/matching/default-settings';
import type { MotorInput } from '@/lib/plant/motor';
import { motor, set } from '../easy';
import { failed, onGear } from './asked';

type SetParts = NonNullable<Parameters<typeof set>[0]>;

/** What the eleven questions of the mount find beyond ok, as "criterion grade work". */
function beyondOk(ofSet: SetParts, ofMotor: Partial<MotorInput>): string[] {
  const pumpSet = set(ofSet);
  const candidate = motor(ofMotor);
  const context = contextOf(pumpSet, candidate, { settings: defaultSettings, asOf: null });
  return criteria.slice(0, 11).flatMap(([id, ask]) => {
    const finding = ask(pumpSet, candidate, context);
    if (finding === null || finding.grade === 'ok') return [];
    return [[id, finding.grade, ...(finding.work === null ? [] : [finding.work.id])].join(' ')];
  });
}

const B3 = { mounting: 'IM B3' };
const face = { mounting: 'face' };
/** A hub so short that even a size 56 shaft carries it; nothing else is told of it. */
const shortHub = { coupling: { type: 'coupling', hub: { lengthMm: 40 } } } satisfies SetParts;
const closeCoupled = (frame: string): SetParts => ({
  mounting: 'face',
  failed: failed(frame),
  coupling: { type: 'close-coupled', hub: null },
});
const measuredSeat: SetParts = {
  failed: null,
  seat: { shaftHeightMm: 114.3, holesAcrossMm: 190.5, holesAlongMm: 139.7, boltMm: 9.5, holeToShaftEndMm: 139.7 },
  coupling: { type: 'coupling', hub: { boreMm: 28.575, keyWidthMm: 6.35, lengthMm: 60 } },
};

// NEMA frames: MG 1 4.4.1, 4.4.2, 4.4.4 (published); 254U: the superseded U series; IEC frames and flanges: IEC 60072-1
// (published). 184T: D 114.3, 2E 190.5, 2F 139.7, U 28.575, N-W 69.85, BA 69.85 mm. 112M: H 112, A 190, B 140, C 70, D 28,
// E 60 mm. What the differences come to is worked out by hand from these.
test.each([
  ['182/4T on a 182T base', { failed: failed('182T') }, { frame: '182/4T' }, []],
  ['182/4T on a 184T base', { failed: failed('184T') }, { frame: '182/4T' }, []],
  [
    '56HC on the feet of a 56',
    { ...shortHub, failed: failed('56', { codeLetter: 'K' }) },
    { frame: '56HC', mounting: 'foot and face' },
    [],
  ],
  ['56HC on the face of a 56C', onGear({}, '56C'), { frame: '56HC', mounting: 'face' }, []],
  // The shaft: 1-3/8 in against 1-5/8 in, 0.25 in shorter from the same holes.
  [
    '254T for 254U',
    { failed: failed('254U') },
    { frame: '254T' },
    ['shaft-position note', 'shaft-diameter work new-hub'],
  ],
  [
    '254U for 254T',
    { failed: failed('254T') },
    { frame: '254U' },
    ['shaft-position note', 'shaft-diameter work new-hub'],
  ],
  // 2.3 mm lower, 9.7 mm further (0.2 of a 60 mm hub is 12 mm), 28 against 28.575 mm.
  [
    '112M for 184T',
    {},
    { frame: '112M', ...B3 },
    ['shaft-height work shims', 'shaft-position note', 'shaft-diameter work new-hub'],
  ],
  [
    '112M for 184T, whether the hub may be replaced untold',
    { coupling: { type: 'coupling', hub: { lengthMm: 60 } } },
    { frame: '112M', ...B3 },
    ['shaft-height work shims', 'shaft-position note', 'shaft-diameter work new-hub'],
  ],
  [
    '112M for 184T, hub length unknown',
    { coupling: { type: 'coupling', hub: null } },
    { frame: '112M', ...B3 },
    ['shaft-height work shims', 'shaft-position check', 'shaft-diameter work new-hub'],
  ],
  [
    '184T for 112M, enough shims to take out',
    { failed: failed('112M', B3), base: { shimsPresentMm: 2.3 } },
    {},
    ['shaft-height work shims', 'shaft-position note', 'shaft-diameter work new-hub'],
  ],
  [
    '184T for 112M, too few shims',
    { failed: failed('112M', B3), base: { shimsPresentMm: 1.5 } },
    {},
    ['shaft-height block', 'shaft-position note', 'shaft-diameter work new-hub'],
  ],
  // 25.4 mm further: no hub that a 69.85 mm shaft carried overhangs by that.
  [
    '145T for 184T, hub and base untold',
    { coupling: { type: 'coupling', hub: null }, base: {} },
    { frame: '145T' },
    [
      'shaft-height work ground-block',
      'foot-holes block',
      'shaft-position work spacer-coupling',
      'shaft-diameter work new-hub',
    ],
  ],
  [
    '145T for 184T on a transition base, hub untold',
    { coupling: { type: 'coupling', hub: null }, base: { transitionBase: true } },
    { frame: '145T' },
    [
      'shaft-height work transition-base',
      'foot-holes work transition-base',
      'shaft-position work transition-base',
      'shaft-diameter work new-hub',
    ],
  ],
  // 184.15 mm circle of tapped holes against 265 mm of free ones; 34.925 against 38 mm.
  [
    '213TC where an FF265 stood',
    { mounting: 'face', failed: failed('132S', { mounting: 'IM B5' }), coupling: { type: 'coupling', hub: null } },
    { frame: '213TC', ...face },
    ['shaft-diameter work new-hub', 'face block'],
  ],
  [
    'FF265 where a 213TC stood',
    { mounting: 'face', failed: failed('213TC', face), coupling: { type: 'coupling', hub: null } },
    { frame: '132S', mounting: 'IM B5' },
    ['shaft-diameter work new-hub', 'face block'],
  ],
  ['JM for JM, feet or none', closeCoupled('184JM'), { frame: '184JM', ...face }, []],
  ['JP for JM', closeCoupled('184JM'), { frame: '184JP', ...face }, ['shaft-diameter block', 'shaft-length block']],
  [
    'plain C face for JM',
    closeCoupled('184JM'),
    { frame: '184TC', ...face },
    ['shaft-diameter block', 'shaft-length block', 'key block', 'face block'],
  ],
  [
    '286TS on a belt',
    { failed: failed('286T'), coupling: { type: 'belt', hub: null } },
    { frame: '286TS' },
    ['shaft-position note', 'shaft-diameter work sheave', 'shaft-length block'],
  ],
  [
    'a Z shaft that was measured',
    {},
    { frame: '184TZ', measured: { shaftDiameterMm: 28.575, shaftLengthMm: 69.85, keyWidthMm: 6.35 } },
    [],
  ],
  [
    'a Z shaft nobody measured',
    {},
    { frame: '184TZ' },
    ['shaft-position check', 'shaft-diameter check', 'shaft-length check', 'key check'],
  ],
  [
    'a Y mounting nobody measured',
    {},
    { frame: '184TY' },
    ['mounting check', 'shaft-height check', 'foot-holes check', 'shaft-position check'],
  ],
  ['no plate, the seat measured', measuredSeat, {}, []],
  ['no plate, the seat measured, another frame', measuredSeat, { frame: '182T' }, ['foot-holes block']],
  [
    'no plate and nothing measured',
    { failed: null, coupling: { type: 'coupling', hub: null } },
    {},
    ['shaft-height check', 'foot-holes check', 'shaft-position check', 'shaft-diameter check', 'key check'],
  ],
  [
    'B35 for B35 by feet and face',
    { mounting: 'foot-and-face', failed: failed('112M', { mounting: 'IM B35' }) },
    { frame: '112M', mounting: 'IM B35' },
    [],
  ],
  [
    'B3 for B35 by feet and face',
    { mounting: 'foot-and-face', failed: failed('112M', { mounting: 'IM B35' }) },
    { frame: '112M', ...B3 },
    ['mounting block', 'shaft-length check', 'face block'],
  ],
  [
    'V1 with the shaft down',
    { mounting: 'face', shaftDirection: 'down', failed: failed('112M', { mounting: 'IM V1' }) },
    { frame: '112M', mounting: 'IM V1' },
    [],
  ],
  [
    'B5 turned with the shaft down',
    { mounting: 'face', shaftDirection: 'down', failed: failed('112M', { mounting: 'IM V1' }) },
    { frame: '112M', mounting: 'IM B5' },
    ['mounting check'],
  ],
  [
    'held by its face, with feet where none were',
    { mounting: 'face', failed: failed('112M', { mounting: 'IM B5' }) },
    { frame: '112M', mounting: 'IM B35' },
    ['mounting check'],
  ],
  [
    'held by its face, with feet as before',
    { mounting: 'face', failed: failed('112M', { mounting: 'IM B35' }) },
    { frame: '112M', mounting: 'IM B35' },
    ['mounting note'],
  ],
] as const)('the mount, whole: %s', (_, ofSet, ofMotor, found) => {
  expect(beyondOk(ofSet as SetParts, ofMotor as Partial<MotorInput>)).toEqual(found);
});
