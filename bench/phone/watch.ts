/** What the page notes of itself, in page time (ms since its navigation began). */
export interface Noted {
  /** Layout shifts that nobody's touch explains, with the elements that moved. */
  shifts: { value: number; at: number; path: string; moved: string[] }[];
  /** What was asked of the worker, how long the page waited, and how long the worker was at it. */
  asks: { name: string; from: number; ms: number; workerMs: number }[];
  /** When the finger was lifted last. */
  touched: number;
  /** When what `waitFor` waits for was first painted; null: not yet. */
  painted: number | null;
}

export interface Watch extends Noted {
  /** Types into the field as soon as it is there, and waits for the line that answers. */
  typeAtOnce(tag: string): void;
  /** Notes when the selector's first element with this text is painted; from the next touch on, or from now. */
  waitFor(selector: string, text: string): void;
}

declare global {
  interface Window {
    bench: Watch;
  }
}

/** Put into every page before its own scripts: it must stand alone. */
export function watch() {
  let wanted: { selector: string; text: string } | null = null;
  const bench: Watch = {
    ...{ shifts: [], asks: [], touched: 0, painted: null },
    waitFor(selector, text) {
      wanted = { selector, text };
      bench.painted = null;
      look();
    },
    typeAtOnce(tag) {
      typed = tag;
      look();
    },
  };
  window.bench = bench;
  let typed: string | null = null;

  function look() {
    const field = typed === null ? null : document.querySelector<HTMLInputElement>('#q');
    if (field !== null && typed !== null) {
      const tag = typed;
      typed = null;
      Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')?.set?.call(field, tag);
      field.dispatchEvent(new Event('input', { bubbles: true }));
      bench.waitFor('.lines .line-name', tag);
    }
    if (wanted === null) return;
    const { selector, text } = wanted;
    const found = [...document.querySelectorAll(selector)].some(
      (one) => one.closest('[hidden]') === null && (text === '' || (one.textContent ?? '').includes(text)),
    );
    if (!found) return;
    wanted = null;
    // Behind the frame in which it is drawn.
    requestAnimationFrame(() => {
      const paint = () => {
        bench.painted = performance.now();
      };
      void scheduler.postTask(paint, { priority: 'user-blocking' });
    });
  }
  new MutationObserver(look).observe(document, {
    ...{ childList: true, subtree: true, characterData: true },
    attributeFilter: ['hidden'],
  });
  document.addEventListener(
    'click',
    ({ timeStamp }) => {
      bench.touched = timeStamp;
    },
    { capture: true },
  );

  interface Shift extends PerformanceEntry {
    value: number;
    hadRecentInput: boolean;
    sources: { node: Node | null }[];
  }
  new PerformanceObserver((list) => {
    for (const entry of list.getEntries() as Shift[]) {
      if (entry.hadRecentInput) continue;
      const moved = entry.sources.map(({ node }) =>
        node instanceof Element
          ? `${node.localName}.${node.className}`
          : `text "${(node?.textContent ?? '').slice(0, 30)}"`,
      );
      bench.shifts.push({ value: entry.value, at: entry.startTime, path: location.pathname, moved });
    }
  }).observe({ type: 'layout-shift', buffered: true });

  const Plain = window.Worker;
  window.Worker = class extends Plain {
    private open = new Map<number, { name: string; from: number }>();
    constructor(url: string | URL, options?: WorkerOptions) {
      super(url, options);
      this.addEventListener('message', ({ data }) => {
        const asked = this.open.get(data?.id);
        if (asked !== undefined) bench.asks.push({ ...asked, ms: performance.now() - asked.from, workerMs: data.ms });
        this.open.delete(data?.id);
      });
    }
    override postMessage(message: { id: number; ask: string }) {
      this.open.set(message.id, { name: message.ask, from: performance.now() });
      super.postMessage(message);
    }
  };
}
