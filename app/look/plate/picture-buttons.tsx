import { lit, type PictureView, type Sizes, STEP, turned, WHOLE, zoomed } from './picture-view';
import type { PictureLook } from './use-picture-look';

const BUTTONS: readonly { words: string; by: (view: PictureView, sizes: Sizes) => PictureView }[] = [
  { words: 'Larger', by: (view, sizes) => zoomed(view, STEP.scale, sizes) },
  { words: 'Smaller', by: (view, sizes) => zoomed(view, 1 / STEP.scale, sizes) },
  { words: 'Turn', by: turned },
  { words: 'Whole', by: ({ turns }) => ({ ...WHOLE, turns }) },
  { words: 'Lighter', by: (view) => lit(view, 'brightness', STEP.light) },
  { words: 'Darker', by: (view) => lit(view, 'brightness', 1 / STEP.light) },
  { words: 'Contrast +', by: (view) => lit(view, 'contrast', STEP.light) },
  { words: 'Contrast −', by: (view) => lit(view, 'contrast', 1 / STEP.light) },
];

/** What can be done to the picture, each a word to press. On a phone they are one row that is pushed aside. */
export function PictureButtons({ look: { change } }: { look: PictureLook }) {
  return (
    <fieldset className="plate-tools">
      <legend className="vh">The picture</legend>
      {BUTTONS.map(({ words, by }) => (
        <button key={words} type="button" className="plate-tool" onClick={() => change(by)}>
          {words}
        </button>
      ))}
    </fieldset>
  );
}
