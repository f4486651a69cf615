import Link from 'next/link';

export const PLACES = [
  { href: '/', words: 'Register' },
  { href: '/sets', words: 'Sets' },
  { href: '/motors', words: 'Motors' },
  { href: '/stores', words: 'Stores' },
  { href: '/frames', words: 'Frames' },
  { href: '/desk', words: 'Desk' },
] as const;
export type Place = (typeof PLACES)[number]['href'];

/** The desk's way around: a row in the bar at a desk, a list at the foot of the sheet on a phone. */
export function MainNav({ current, className }: { current?: Place; className: 'nav-row' | 'nav-list' }) {
  return (
    <nav className={className} aria-label={className === 'nav-row' ? 'Main' : 'Main, at the foot'}>
      {PLACES.map(({ href, words }) => (
        <Link key={href} href={href} aria-current={current === href ? 'page' : undefined}>
          {words}
        </Link>
      ))}
    </nav>
  );
}
