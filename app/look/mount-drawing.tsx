import type { Drawing } from '@/lib/drawing/drawing';
import type { Mount } from '@/lib/drawing/mount';
import type { MountFacts } from '@/lib/drawing/mount-facts';
import { mountViews } from '@/lib/drawing/mount-views';
import { DetailSvg, DrawingSvg } from './drawing-svg';
import { SectionHead } from './section-head';
import { Tag } from './tag';

export interface MountDrawingProps {
  incoming: Mount;
  /** Null shows one motor alone. */
  outgoing: Mount | null;
  facts: MountFacts;
  /** `side` for a job sheet or the page of a set: with the feet only where the base is drilled for them. */
  only?: 'side';
  /** Without its own heading. */
  isBare?: true;
}

/** Two motors to scale in up to three views, each with its details and a sentence. */
export function MountDrawing({ incoming, outgoing, facts, only, isBare }: MountDrawingProps) {
  const views = mountViews(incoming, outgoing, facts);
  const shown = only === undefined ? views : views.filter((view, i) => i === 0 || isDrilled(view));
  if (shown.length === 0) return <p className="pt-3">Nothing can be drawn: no dimension of the motor is known.</p>;
  return (
    <section>
      {!isBare && <SectionHead title="To scale" aside={`${facts.unit}; bodies nominal`} />}
      {outgoing !== null && (
        <p className="key label">
          <span>
            <i />
            <span>
              <Tag>{incoming.name}</Tag>, goes in
            </span>
          </span>
          <span>
            <i className="out" />
            <span>
              <Tag>{outgoing.name}</Tag>, goes out
            </span>
          </span>
          {shown.some(isToAct) && (
            <span>
              <i className="act" />
              where to act
            </span>
          )}
        </p>
      )}
      <div className="views">
        {shown.map((view) => (
          <View key={view.caption} view={view} isAlone={outgoing === null} />
        ))}
      </div>
    </section>
  );
}

const isToAct = ({ shapes }: Drawing) =>
  shapes.some(({ role }) => role === 'shim' || role === 'new' || role === 'act-line');

const isDrilled = ({ shapes }: Drawing) => shapes.some(({ part }) => part === 'new-hole' || part === 'slot');

function View({ view, isAlone }: { view: Drawing; isAlone: boolean }) {
  return (
    <figure className="fig">
      <figcaption className="label">{view.caption}</figcaption>
      <DrawingSvg drawing={view} />
      {view.details.length > 0 && (
        <div className="details">
          {view.details.map((detail) => (
            <div key={detail.letter}>
              <p className="label">{detail.caption}</p>
              <DetailSvg detail={detail} shapes={view.shapes} />
              {detail.figures !== null && <p className="label pt-1">{detail.figures}</p>}
            </div>
          ))}
        </div>
      )}
      {view.notDrawn.length > 0 && (
        <p className="note label">
          Not known{isAlone ? '' : ' of either'}, so not drawn: {view.notDrawn.join(', ')}.
        </p>
      )}
    </figure>
  );
}
