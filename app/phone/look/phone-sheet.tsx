import type { ReactNode } from 'react';
import { WayBack } from '@/app/look/way-back';
import type { Status } from '../asked';
import type { Answer } from '../use-ask';
import { NewerNote } from './newer-note';
import { SheetSwitch } from './sheet-switch';
import { Strip } from './strip';

/** One page at the pump: the bar, the strip that says how old this is, the sheet. An ActionBar stands last. */
export function PhoneSheet({
  status,
  back,
  children,
}: {
  status: Answer<Status>;
  back: { href: string; words: string } | undefined;
  children: ReactNode;
}) {
  return (
    <>
      <header className="bar">
        <WayBack back={back} home="/pump" />
        <SheetSwitch />
        <a className="tool" href="/scan">
          <svg viewBox="0 0 24 24" fill="none" stroke="currentColor" strokeWidth="2" aria-hidden="true">
            <path d="M3 8V3h5M16 3h5v5M21 16v5h-5M8 21H3v-5M6 12h12" />
          </svg>
          <span className="vh">Scan a label</span>
        </a>
        <a className="tool" href="/pump">
          <svg viewBox="0 0 24 24" fill="none" stroke="currentColor" strokeWidth="2" aria-hidden="true">
            <circle cx="10.5" cy="10.5" r="6.5" />
            <path d="m15.5 15.5 6 6" />
          </svg>
          <span className="vh">Find</span>
        </a>
      </header>
      <main id="content" tabIndex={-1} className="sheet">
        <Strip status={status} />
        <NewerNote />
        {children}
      </main>
    </>
  );
}
