import type { AskName, Asks } from './asked';
import { workerPath } from './files';

declare global {
  /** The shell has begun it. */
  var bedplateWorker: Worker | undefined;
}

const worker = globalThis.bedplateWorker ?? new Worker(workerPath, { type: 'module', name: 'bedplate' });
const open = new Map<number, { resolve: (answer: never) => void; reject: (error: Error) => void }>();
const listeners = new Set<() => void>();
let last = 0;

worker.onmessage = ({ data }: MessageEvent<{ id?: number; answer?: unknown; failed?: string; changed?: true }>) => {
  if (data.changed) for (const listener of listeners) listener();
  if (data.id === undefined) return;
  const asked = open.get(data.id);
  open.delete(data.id);
  if (data.failed === undefined) asked?.resolve(data.answer as never);
  else asked?.reject(new Error(data.failed));
};

/** Asks the worker. */
export function ask<K extends AskName>(name: K, told: Asks[K]['in']): Promise<Asks[K]['out']> {
  last += 1;
  const id = last;
  return new Promise((resolve, reject) => {
    open.set(id, { resolve, reject });
    worker.postMessage({ id, ask: name, told });
  });
}

/** Calls when what is kept on the phone has changed. Answers how to stop that. */
export function whenChanged(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

export const tellChanged = () => {
  for (const listener of listeners) listener();
};
