import { type KeyboardEvent, type PointerEvent, useEffect, useRef } from 'react';
import { moved, type PictureView, type Sizes, STEP, styleOf, turned, WHOLE, zoomed } from './picture-view';
import type { PictureLook } from './use-picture-look';

type Change = (view: PictureView, sizes: Sizes) => PictureView;

const KEYS: Readonly<Record<string, Change>> = {
  ArrowLeft: (view, sizes) => moved(view, STEP.px, 0, sizes),
  ArrowRight: (view, sizes) => moved(view, -STEP.px, 0, sizes),
  ArrowUp: (view, sizes) => moved(view, 0, STEP.px, sizes),
  ArrowDown: (view, sizes) => moved(view, 0, -STEP.px, sizes),
  '+': (view, sizes) => zoomed(view, STEP.scale, sizes),
  '=': (view, sizes) => zoomed(view, STEP.scale, sizes),
  '-': (view, sizes) => zoomed(view, 1 / STEP.scale, sizes),
  t: turned,
  '0': ({ turns }) => ({ ...WHOLE, turns }),
};

/** The window before the picture: pulled by one finger or the mouse, spread by two, and moved by keys. */
export function PictureWindow({
  src,
  look: { view, sizes, setSizes, change },
  onFail,
}: {
  src: string;
  look: PictureLook;
  onFail: () => void;
}) {
  const frame = useRef<HTMLDivElement>(null);
  const image = useRef<HTMLImageElement>(null);
  const fingers = useRef(new Map<number, { x: number; y: number }>());

  useEffect(() => {
    const watch = new ResizeObserver(() => setSizes(sizesOf(frame.current, image.current)));
    if (frame.current !== null) watch.observe(frame.current);
    return () => watch.disconnect();
  }, [setSizes]);

  const onKeyDown = (event: KeyboardEvent) => {
    const by = event.ctrlKey || event.metaKey || event.altKey ? undefined : KEYS[event.key];
    if (by === undefined) return;
    event.preventDefault();
    change(by);
  };
  const onPointerDown = (event: PointerEvent) => {
    if (event.button !== 0) return;
    event.currentTarget.setPointerCapture(event.pointerId);
    fingers.current.set(event.pointerId, { x: event.clientX, y: event.clientY });
  };
  const onPointerMove = (event: PointerEvent) => {
    const before = fingers.current.get(event.pointerId);
    if (before === undefined) return;
    const now = { x: event.clientX, y: event.clientY };
    fingers.current.set(event.pointerId, now);
    const other = [...fingers.current].find(([id]) => id !== event.pointerId)?.[1];
    if (other === undefined) return change((view, own) => moved(view, now.x - before.x, now.y - before.y, own));
    const { left, top, width, height } = event.currentTarget.getBoundingClientRect();
    const about = { x: (now.x + other.x) / 2 - left - width / 2, y: (now.y + other.y) / 2 - top - height / 2 };
    const apart = (one: { x: number; y: number }) => Math.hypot(one.x - other.x, one.y - other.y) || 1;
    change((view, own) =>
      moved(zoomed(view, apart(now) / apart(before), own, about), (now.x - before.x) / 2, (now.y - before.y) / 2, own),
    );
  };
  const onPointerEnd = (event: PointerEvent) => fingers.current.delete(event.pointerId);

  return (
    <div
      ref={frame}
      className={view.scale === 1 ? 'plate-window' : 'plate-window is-large'}
      role="application"
      aria-label="The picture. Arrow keys move it, plus and minus size it, T turns it, 0 shows the whole."
      // biome-ignore lint/a11y/noNoninteractiveTabindex: it takes keys, as its name says
      tabIndex={0}
      onKeyDown={onKeyDown}
      onPointerDown={onPointerDown}
      onPointerMove={onPointerMove}
      onPointerUp={onPointerEnd}
      onPointerCancel={onPointerEnd}
    >
      {/* biome-ignore lint/performance/noImgElement: it is on this device, or a private answer */}
      <img
        ref={image}
        src={src}
        alt="The plate"
        draggable={false}
        onError={onFail}
        onLoad={() => setSizes(sizesOf(frame.current, image.current))}
        style={styleOf(view, sizes)}
      />
    </div>
  );
}

/** Null while the picture is not there, or stands folded away. */
function sizesOf(frame: HTMLElement | null, image: HTMLImageElement | null): Sizes | null {
  const { width = 0, height = 0 } = frame?.getBoundingClientRect() ?? {};
  const { naturalWidth = 0, naturalHeight = 0 } = image ?? {};
  return Math.min(width, height, naturalWidth, naturalHeight) > 0
    ? { window: { width, height }, picture: { width: naturalWidth, height: naturalHeight } }
    : null;
}
