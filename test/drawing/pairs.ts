import { type Mount, mountOfMotor } from '@/lib/drawing/mount';
import type { MountFacts } from '@/lib/drawing/mount-facts';
import { mountViews } from '@/lib/drawing/mount-views';
import type { WorkId } from '@/lib/plant/work';
import { dimensionsOf } from '@/lib/standards/dimensions-of';
import { iecFootFrames } from '@/lib/standards/tables/iec-foot-frames';
import { nemaFootFrames } from '@/lib/standards/tables/nema-foot-frames';
import { facts } from './mounts';

const nema = (frame: string) => mountOfMotor(frame, dimensionsOf(frame, { system: 'NEMA' }), 'right');
const iec = (frame: string, mounting: string) =>
  mountOfMotor(`${frame} ${mounting}`, dimensionsOf(frame, { mounting, poles: 4, system: 'IEC' }), 'top');

/** Every frame of the tables of both standards. */
const FEET = [
  ...nemaFootFrames.rows.map(({ frame }) => nema(frame)),
  ...iecFootFrames.rows.map(({ frame }) => iec(frame, 'IM B3')),
];
const FACES = [
  ...['56C', '145TC', '184TC', '215TC', '256TC', '326TC', '405TC'].map(nema),
  ...['63', '80', '100L', '132S', '160M', '225M', '280S'].flatMap((frame) =>
    ['IM B5', 'IM B14', 'IM B35'].map((code) => iec(frame, code)),
  ),
];
/** Of so many motors one in nineteen pairs is drawn, by a pattern that gives each motor every kind of partner. */
const SAMPLED_FROM = 60;

/** What the findings may ask for, in sets that go together; the last asks for all that a side view can show. */
const WORKS: WorkId[][] = [
  [],
  ['shims', 'spacer-coupling', 'new-hub'],
  ['ground-block', 'slot-or-redrill', 'bushing'],
  ['transition-base', 'rebore'],
  ['ground-block', 'move-base', 'spacer-coupling', 'bushing', 'new-hub'],
];

export function* pairs(motors: readonly Mount[], together: MountFacts['together'] | null) {
  let i = 0;
  for (const [row, incoming] of motors.entries())
    for (const [column, outgoing] of motors.entries()) {
      if (motors.length > SAMPLED_FROM && (row + 2 * column) % 19 !== 0) continue;
      const work = WORKS[i++ % WORKS.length] ?? [];
      const isMoved = work.includes('transition-base') || work.includes('move-base');
      const given: MountFacts = {
        ...facts,
        together: together ?? (isMoved ? 'shaft-ends' : 'holes'),
        shimsPresentMm: i % 7 === 0 ? null : (i % 4) * 1.5,
        hub: i % 3 === 0 ? null : { lengthMm: (outgoing.shaftLengthMm ?? 60) * 0.9, boreMm: outgoing.shaftDiameterMm },
        act: i % 2 === 0 ? ['foot-holes', 'face'] : [],
        work,
        unit: i % 5 === 0 ? 'in' : 'mm',
      };
      yield { incoming, outgoing, given, views: mountViews(incoming, outgoing, given) };
    }
  for (const alone of motors) {
    const given: MountFacts = { ...facts, together: together ?? 'holes', hub: null, work: [] };
    yield { incoming: alone, outgoing: null, given, views: mountViews(alone, null, given) };
  }
}

export const GROUPS = [
  ['foot frames of both standards, each against each', FEET, null],
  ['faces with feet and without, on feet', FACES, null],
  ['faces with feet and without, faces together', FACES, 'faces'],
] as const;
