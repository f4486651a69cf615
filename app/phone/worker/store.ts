import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { About, Waiting } from '../asked';

/** The phone's own database. Sets and motors lie in parts, each a text, since a phone reads few texts faster than many records. */
interface Shape extends DBSchema {
  about: { key: 'now'; value: About };
  parts: { key: string; value: string };
  outbox: { key: string; value: Waiting };
  drafts: { key: string; value: unknown };
}
export type Store = IDBPDatabase<Shape>;

const NAME = 'bedplate';
const VERSION = 1;
let opened: Promise<Store> | null = null;

export function store(): Promise<Store> {
  opened ??= openDB<Shape>(NAME, VERSION, {
    upgrade(db) {
      db.createObjectStore('about');
      db.createObjectStore('parts');
      db.createObjectStore('outbox', { keyPath: 'key' });
      db.createObjectStore('drafts');
    },
    // Another tab with a newer app wants it: it gets it.
    blocking: () => void close(),
    terminated: () => {
      opened = null;
    },
  });
  opened.catch(() => {
    opened = null;
  });
  return opened;
}

async function close() {
  const open = opened;
  opened = null;
  (await open)?.close();
}

export const isFull = (error: unknown): boolean =>
  error instanceof DOMException && (error.name === 'QuotaExceededError' || error.name === 'UnknownError');
