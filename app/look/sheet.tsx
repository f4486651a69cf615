import Link from 'next/link';
import type { ReactNode } from 'react';
import { KeepPack } from '../keep-pack';
import { Keys } from './keys';
import { MainNav } from './main-nav';
import { PageBar, type PageBarProps } from './page-bar';

/**
 * One page: the bar, the sheet, and on a phone the way around at its foot. `wide` takes the desk's width from 960 px.
 * An ActionBar stands last among the children.
 */
export function Sheet({ children, ...bar }: PageBarProps & { children: ReactNode }) {
  const { current, person, isBare, wide } = bar;
  return (
    <>
      <PageBar {...bar} />
      <main id="content" tabIndex={-1} className={wide ? 'sheet wide' : 'sheet'}>
        {children}
      </main>
      {person !== undefined && <Keys />}
      {person !== undefined && <KeepPack />}
      {!isBare && (
        <footer className={wide ? 'sheet-foot wide' : 'sheet-foot'}>
          <MainNav className="nav-list" {...(current !== undefined && { current })} />
          {person !== undefined && (
            <p className="nav-list">
              <Link href={person.href}>{person.words}</Link>
            </p>
          )}
        </footer>
      )}
    </>
  );
}
