import { askedBy } from '@/app/api/v1/asked-by';
import { problem } from '@/app/api/v1/problem';
import { fileAnswer } from '@/app/file-answer';
import { coverAsked, coverMotorsAsked } from '@/app/lists/asked-for';
import { VERDICT_WORDS } from '@/app/look/words';
import { ratingText } from '@/app/rating-text';
import { exportCoverOfMotors, exportCoverOfSets } from '@/lib/register/commands/export-cover';
import type { MotorLine } from '@/lib/register/queries/cover-of-motors';
import type { CoveredLine } from '@/lib/register/queries/cover-of-sets';
import type { Counts } from '@/lib/spares/cover/set-standing';

/** The cover as it is asked for, one set or one shelf motor a row. */
export async function GET(request: Request): Promise<Response> {
  return askedBy(request, 'register.export', async (actor) => {
    const query = Object.fromEntries(new URL(request.url).searchParams);
    const { of = 'sets', format = 'csv' } = query;
    if (format !== 'csv' && format !== 'xlsx') return problem(422, 'The format is csv or xlsx.');
    if (of === 'sets') {
      const lines = await exportCoverOfSets(actor, coverAsked(query));
      return fileAnswer('cover', format, [SETS, ...lines.map(setRow)]);
    }
    if (of !== 'motors') return problem(422, 'The cover goes out by sets or by motors.');
    const lines = await exportCoverOfMotors(actor, coverMotorsAsked(query));
    return fileAnswer('cover-motors', format, [MOTORS, ...lines.map(motorRow)]);
  });
}

const VERDICTS = ['straight-swap', 'swap-with-work', 'check-first'] as const;
const WORDS = VERDICTS.map((verdict) => VERDICT_WORDS[verdict]);
const SETS = [
  ...['Tag', 'Serves', 'Pump', 'Area', 'Criticality', ...WORDS, 'Shelf motors in all'],
  ...['Best motor', 'Its verdict', 'Hours'],
];
const MOTORS = [
  ...['Motor', 'Plate', 'Store', 'Shelf', 'Alike on the shelves', ...WORDS, 'Sets in all'],
  ...['Used tonight: sets with none left', 'Used tonight: sets with one left'],
];

const told = (counts: Counts) => VERDICTS.map((verdict) => counts[verdict]);

function setRow({ of, counts, all, best }: CoveredLine): (string | number | null)[] {
  const ofBest = best === null ? [null, null, null] : [best.motor.id, VERDICT_WORDS[best.fit.verdict], best.fit.hours];
  return [of.tag, of.service, of.pump, of.area, of.criticality, ...told(counts), all, ...ofBest];
}

const motorRow = ({ motor, of, alike, counts, sets, leavesNone, leavesOne }: MotorLine): (string | number | null)[] => [
  ...[motor.id, ratingText(motor), of.store, of.shelf, alike, ...told(counts), sets.length, leavesNone, leavesOne],
];
