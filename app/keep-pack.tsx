'use client';

import { useEffect } from 'react';

/** The pack is asked for anew after so long, whatever page is open. */
const AGAIN_MS = 10 * 60_000;
const NAME = 'bedplate-pack-asked';

/**
 * On a phone, or where the pages at the pump were opened before: keeps the app and the site on it, so that both are there when
 * the network is not. Nothing is seen of it.
 */
export function KeepPack() {
  useEffect(() => {
    const asked = Number(localStorage.getItem(NAME));
    const isPhone = window.matchMedia('(pointer: coarse)').matches || asked > 0;
    const worker = document.querySelector<HTMLMetaElement>('meta[name=phone-worker]')?.content;
    if (worker === undefined || !isPhone || Math.abs(Date.now() - asked) < AGAIN_MS) return;
    void navigator.serviceWorker?.register('/sw.js').catch(() => {});
    let keeper: Worker | null = null;
    const stop = () => keeper?.terminate();
    const start = setTimeout(() => {
      keeper = new Worker(worker, { type: 'module', name: 'bedplate' });
      // It says so when it is done.
      keeper.onmessage = () => {
        localStorage.setItem(NAME, String(Date.now()));
        stop();
      };
    }, 1_000);
    return () => {
      clearTimeout(start);
      stop();
    };
  }, []);
  return null;
}
