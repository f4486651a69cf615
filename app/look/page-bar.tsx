import Link from 'next/link';
import { MainNav, type Place } from './main-nav';
import { ThemeSwitch } from './theme-switch';
import { WayBack } from './way-back';

export interface PageBarProps {
  /** The way back; without it the name of the program leads to the register. */
  back?: { href: string; words: string };
  current?: Place;
  /** Who is signed in: a link at a desk. */
  person?: { href: string; words: string };
  /** Without a signed-in person there is nothing to find. */
  isBare?: true;
  wide?: true;
}

export function PageBar({ back, current, person, isBare, wide }: PageBarProps) {
  return (
    <header className={wide ? 'bar wide' : 'bar'}>
      <WayBack back={back} home="/" />
      {!isBare && <MainNav className="nav-row" {...(current !== undefined && { current })} />}
      <ThemeSwitch />
      {!isBare && (
        <Link className="tool" href="/find" aria-label="Find">
          <svg viewBox="0 0 24 24" fill="none" stroke="currentColor" strokeWidth="2" aria-hidden="true">
            <circle cx="10.5" cy="10.5" r="6.5" />
            <path d="m15.5 15.5 6 6" />
          </svg>
          <span className="tool-words">Find</span>
        </Link>
      )}
      {person !== undefined && wide && (
        <Link className="tool desk-only" href={person.href}>
          {person.words}
        </Link>
      )}
    </header>
  );
}
