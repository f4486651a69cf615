import type { Metadata, Viewport } from 'next';
import { answered } from '@/app/answered';
import { Sheet } from '@/app/look/sheet';
import { momentText } from '@/app/moment';
import { MotorForm } from '@/app/motors/motor-form';
import { whereOf } from '@/app/motors/motor-places';
import { NoPlateLinks } from '@/app/motors/no-plate-links';
import { shelfChoices } from '@/app/motors/shelf-choices';
import { ToldNote } from '@/app/motors/told-note';
import { toldOf } from '@/app/motors/told-of';
import { unknownMotor } from '@/app/motors/unknown-motor';
import { motorEditPath, motorPath, picturePath, written } from '@/app/paths';
import { asked } from '@/app/record/record-state';
import { RetireForm } from '@/app/record/retire-form';
import { personOf, whoMay } from '@/app/who-is-here';
import { MOTOR_FIELDS } from '@/lib/fields/motor-fields';
import { shownIn, type Typed } from '@/lib/fields/read-form';
import { motorByNumber } from '@/lib/register/queries/motor-by-number';
import { ownUnits } from '@/lib/register/queries/own-units';
import { picturesOf } from '@/lib/register/queries/pictures-of';
import { recordNow } from '@/lib/register/queries/record-now';
import { shelves } from '@/lib/register/queries/shelves';
import { siteSettings } from '@/lib/register/queries/site-settings';

// What is typed is read off the picture above it: both stay in sight over a phone's keyboard.
export const viewport: Viewport = { interactiveWidget: 'resizes-content' };

type Props = PageProps<'/motors/[number]/edit'>;

export const generateMetadata = async ({ params }: Props): Promise<Metadata> => ({
  title: `Edit ${written((await params).number)}`,
});

/** Changes a motor's plate, its place and what is known of it. */
export default answered(async function EditMotorPage({ params, searchParams }: Props) {
  const number = written((await params).number);
  const actor = await whoMay('motor.edit', motorEditPath(number));
  const known = await motorByNumber(actor, number);
  const stands = known === null ? null : await recordNow(actor, 'motor', known.row.id);
  if (known === null || stands === null) return unknownMotor(actor, number);
  const [units, places, pictures, { timezone }] = await Promise.all([
    ownUnits(actor),
    shelves(actor),
    picturesOf(actor, { thing: 'motor', id: known.row.id }),
    siteSettings(actor),
  ]);
  const shown: Typed = {
    ...shownIn(MOTOR_FIELDS, stands.state, units, { hasRatings: true }),
    ...whereOf(stands.state, known.whereabouts.setTag),
  };
  // What the register knows is not written over by an address.
  const told = Object.fromEntries(Object.entries(toldOf(await searchParams)).filter(([path]) => !shown[path]));
  return (
    <Sheet wide person={personOf(actor)} back={{ href: motorPath(number), words: number }}>
      <h1 className="page">
        Edit <bdi>{known.row.plantNumber}</bdi>
      </h1>
      <ToldNote told={told} />
      <NoPlateLinks motor={known.row.plantNumber} />
      <MotorForm
        first={{ ...asked(shown, stands.version), typed: { ...shown, ...told } }}
        units={units}
        recordId={known.row.id}
        shelves={shelfChoices(places)}
        kept={pictures.map(({ pictureId, caption, at }) => ({
          src: picturePath(pictureId),
          words: [caption, momentText(at, timezone)].filter(Boolean).join(', '),
        }))}
      />
      <RetireForm thing="motor" id={known.row.id} version={stands.version} path={motorPath(number)} />
    </Sheet>
  );
});
