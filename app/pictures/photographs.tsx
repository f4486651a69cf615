import { type Actor, may } from '@/lib/auth/may';
import type { PictureOf } from '@/lib/register/picture-of';
import { type PictureLine, picturesOf } from '@/lib/register/queries/pictures-of';
import { AskForm } from '../ask-form';
import type { Query } from '../lists/asked-for';
import { SectionHead } from '../look/section-head';
import { momentText } from '../moment';
import { picturePath } from '../paths';
import { retirePictureHere } from './ask-pictures';
import { PictureForm } from './picture-form';
import { PictureNote } from './picture-note';

/** As many as are looked at without being asked for. */
const FIRST = 6;

/** The photographs of a set, a motor or a fault, and the way to send one. */
export async function Photographs({
  actor,
  of,
  path,
  query,
  timezone,
}: {
  actor: Actor;
  of: PictureOf;
  path: string;
  query: Query;
  timezone: string;
}) {
  const pictures = await picturesOf(actor, of);
  const line = (picture: PictureLine) => (
    <PhotographLine
      key={picture.pictureId}
      picture={picture}
      path={path}
      timezone={timezone}
      mayRetire={may(actor, 'picture.retire')}
    />
  );
  const more = pictures.slice(FIRST);
  return (
    <section id="photographs">
      <SectionHead title="Photographs" aside={pictures.length === 0 ? 'none yet' : pictures.length} />
      {!('changed' in query) && <PictureNote query={query} />}
      <ul className="photographs">{pictures.slice(0, FIRST).map(line)}</ul>
      {more.length > 0 && (
        <details>
          <summary className="more">{more.length} older</summary>
          <ul className="photographs">{more.map(line)}</ul>
        </details>
      )}
      {may(actor, 'picture.keep') && <PictureForm of={of} path={path} />}
    </section>
  );
}

function PhotographLine({
  picture: { pictureId, at, by, caption },
  path,
  timezone,
  mayRetire,
}: {
  picture: PictureLine;
  path: string;
  timezone: string;
  mayRetire: boolean;
}) {
  const taken = momentText(at, timezone);
  return (
    <li>
      <a href={picturePath(pictureId)}>
        {/* biome-ignore lint/performance/noImgElement: a private answer that nothing may keep or resize elsewhere */}
        <img src={`${picturePath(pictureId)}?size=small`} alt="" width={96} height={72} loading="lazy" />
        <span>
          <bdi>{caption ?? 'What it shows is not told'}</bdi>
          <span className="label">
            {taken}, <bdi>{by}</bdi>
          </span>
        </span>
      </a>
      {mayRetire && (
        <AskForm
          id={`retire-${pictureId}`}
          action={retirePictureHere}
          folded={
            <>
              Retire<span className="vh"> the photograph of {taken}</span>
            </>
          }
          button="Take it out of the list"
          fields={[
            { kind: 'hidden', name: 'pictureId', value: pictureId },
            { kind: 'hidden', name: 'to', value: path },
          ]}
        />
      )}
    </li>
  );
}
