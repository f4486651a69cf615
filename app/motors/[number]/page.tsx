import type { Metadata } from 'next';
import Link from 'next/link';
import { answered } from '@/app/answered';
import { AuditLinks } from '@/app/audit/audit-links';
import { DimensionTable, FaceFacts } from '@/app/dimension-table';
import { DoubtsHere, DoubtsLink } from '@/app/doubts/doubts-here';
import { SaidNote } from '@/app/doubts/said-note';
import { HistoryList } from '@/app/history-list';
import { LabelHere } from '@/app/labels/label-here';
import { Facts } from '@/app/look/facts';
import { MountDrawing } from '@/app/look/mount-drawing';
import { SectionHead } from '@/app/look/section-head';
import { Sheet } from '@/app/look/sheet';
import { TitleBlock } from '@/app/look/title-block';
import { dayText, today } from '@/app/moment';
import { factsAlone } from '@/app/motor-drawing';
import { framePath, motorEditPath, motorOnPath, motorPath, written } from '@/app/paths';
import { Photographs } from '@/app/pictures/photographs';
import { PictureNote } from '@/app/pictures/picture-note';
import { PlateFacts, PlateFigures } from '@/app/plate-facts';
import { SavedNote } from '@/app/record/saved-note';
import { WhereaboutsText } from '@/app/whereabouts-text';
import { personOf, whoMay } from '@/app/who-is-here';
import { may } from '@/lib/auth/may';
import { mountOfMotor } from '@/lib/drawing/mount';
import { doubtsOf } from '@/lib/register/queries/doubts-of';
import { motorByNumber } from '@/lib/register/queries/motor-by-number';
import { motorHistory } from '@/lib/register/queries/motor-history';
import { lastRepair } from '@/lib/register/queries/repairs';
import { shelves } from '@/lib/register/queries/shelves';
import { siteSettings } from '@/lib/register/queries/site-settings';
import { motorDimensions } from '@/lib/standards/motor-dimensions';
import { unknownMotor } from '../unknown-motor';
import { RepairPart } from './repair-part';
import { spareFacts } from './spare-facts';

type Props = PageProps<'/motors/[number]'>;

export const generateMetadata = async ({ params }: Props): Promise<Metadata> => ({
  title: written((await params).number),
});

export default answered(async function MotorPage({ params, searchParams }: Props) {
  const number = written((await params).number);
  const actor = await whoMay('register.read', motorPath(number));
  const known = await motorByNumber(actor, number);
  if (known === null) return unknownMotor(actor, number);
  const { row, motor, whereabouts } = known;
  const { settings, timezone } = await siteSettings(actor);
  const [repair, places, lines, doubts] = await Promise.all([
    lastRepair(actor, row.id),
    shelves(actor),
    motorHistory(actor, row.id, 50),
    doubtsOf(actor, [{ thing: 'motor', id: row.id }], today(timezone)),
  ]);
  const query = await searchParams;
  const fit = motorDimensions(motor);
  const mount = mountOfMotor(motor.id, fit, motor.terminalBox);
  const made = [row.maker, row.serial].filter(Boolean).join(', ');
  return (
    <Sheet wide person={personOf(actor)} back={{ href: '/stores', words: 'Stores' }}>
      <TitleBlock
        tag={motor.id}
        kind="Motor"
        name={<bdi>{made === '' ? 'maker not told' : made}</bdi>}
        cells={[
          { label: 'Where', value: <WhereaboutsText at={whereabouts} isLink /> },
          {
            label: 'Frame',
            value:
              motor.frame === null ? (
                'not known'
              ) : (
                <Link className="to" href={framePath(motor.frame)}>
                  {motor.frame}
                </Link>
              ),
          },
          { label: 'Date', value: dayText(new Date(), timezone) },
        ]}
      />
      <SavedNote query={query} />
      {'changed' in query && <PictureNote query={query} />}
      <SaidNote query={query} />
      <DoubtsLink doubts={doubts} />
      <div className="cols">
        <div>
          <SectionHead
            title="Plate"
            {...(may(actor, 'motor.edit') && {
              aside: (
                <Link className="to" href={motorEditPath(motor.id)}>
                  Edit
                </Link>
              ),
            })}
          />
          <PlateFigures motor={motor} />
          <PlateFacts motor={motor} />
          <LabelHere row={row} />
          {row.nameplate?.unread && (
            <>
              <SectionHead title="On the plate, not understood" />
              <p className="pt-3 whitespace-pre-wrap">
                <bdi>{row.nameplate.unread}</bdi>
              </p>
            </>
          )}
          <DoubtsHere actor={actor} doubts={doubts} timezone={timezone} back={motorPath(motor.id)} />
          <RepairPart
            actor={actor}
            motor={motor}
            at={whereabouts}
            repair={repair}
            settings={settings}
            shelves={places}
            timezone={timezone}
          />
          <SectionHead title="As a spare" />
          <Facts rows={spareFacts(motor, row)} />
          <SectionHead title="History" />
          <HistoryList lines={lines} timezone={timezone} isOfMotor />
          <AuditLinks actor={actor} name={motor.id} onPath={motorOnPath(motor.id)} />
        </div>
        <div>
          <MountDrawing incoming={mount} outgoing={null} facts={factsAlone(mount)} />
          <SectionHead title="Dimensions" />
          <DimensionTable dimensions={fit.dimensions} />
          {fit.face !== null && <FaceFacts face={fit.face} />}
          <Photographs
            actor={actor}
            of={{ thing: 'motor', id: row.id }}
            path={motorPath(motor.id)}
            query={query}
            timezone={timezone}
          />
        </div>
      </div>
    </Sheet>
  );
});
