import type { Metadata } from 'next';
import { answered } from '@/app/answered';
import { Sheet } from '@/app/look/sheet';
import { dayStart, today } from '@/app/moment';
import { motorOnPath, motorPath, written } from '@/app/paths';
import { RecordOnDay } from '@/app/record-on';
import { personOf, whoMay } from '@/app/who-is-here';
import { motorByNumber } from '@/lib/register/queries/motor-by-number';
import { ownUnits } from '@/lib/register/queries/own-units';
import { recordThen } from '@/lib/register/queries/record-then';
import { siteSettings } from '@/lib/register/queries/site-settings';
import { unknownMotor } from '../../unknown-motor';

type Props = PageProps<'/motors/[number]/on'>;

export const generateMetadata = async ({ params }: Props): Promise<Metadata> => ({
  title: `${written((await params).number)} as it stood`,
});

/** The motor as it stood on a day. */
export default answered(async function MotorOnPage({ params, searchParams }: Props) {
  const number = written((await params).number);
  const actor = await whoMay('register.read', motorOnPath(number));
  const known = await motorByNumber(actor, number);
  if (known === null) return unknownMotor(actor, number);
  const [{ timezone }, units] = await Promise.all([siteSettings(actor), ownUnits(actor)]);
  const { day: asked } = await searchParams;
  const day = typeof asked === 'string' && dayStart(asked, timezone, 0) !== null ? asked : today(timezone);
  const then = await recordThen(actor, 'motor', known.row.id, dayStart(day, timezone, 1) ?? new Date());
  return (
    <Sheet person={personOf(actor)} back={{ href: motorPath(number), words: known.motor.id }}>
      <h1 className="page">
        <bdi>{known.motor.id}</bdi> as it stood
      </h1>
      {then !== null && <RecordOnDay thing="motor" day={day} units={units} timezone={timezone} {...then} />}
    </Sheet>
  );
});
