import type { Drawing } from './drawing';
import { faceView } from './face-view';
import { feetView } from './feet-view';
import type { Mount } from './mount';
import type { MountFacts } from './mount-facts';
import { sideView } from './side-view';

/** All the views there is something to show in, the letters of their details running on. */
export function mountViews(candidate: Mount, out: Mount | null, facts: MountFacts): Drawing[] {
  let used = 0;
  const nextLetter = () => String.fromCharCode(65 + used++);
  return [
    sideView(candidate, out, facts, nextLetter),
    feetView(candidate, out, facts, nextLetter),
    faceView(candidate, out, facts),
  ].filter((view) => view !== null);
}
