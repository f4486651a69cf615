/** So long nobody must have asked anything. */
const IDLE_MS = 100;
let timer: ReturnType<typeof setTimeout> | undefined;

/** Does the work when nothing else is asked for a moment; what was to be done before is dropped. */
export function whenIdle(work: () => void) {
  clearTimeout(timer);
  timer = setTimeout(work, IDLE_MS);
}
