import Link from 'next/link';

const WAYS = [
  { href: '/cover', words: 'By set' },
  { href: '/cover/motors', words: 'By shelf motor' },
  { href: '/cover/matrix', words: 'Matrix' },
] as const;

/** The pages of the cover, one beside the other. */
export function CoverWays({ current }: { current: (typeof WAYS)[number]['href'] }) {
  return (
    <p className="below-table screen-only">
      {WAYS.map(({ href, words }) =>
        href === current ? (
          <b key={href}>{words}</b>
        ) : (
          <Link key={href} className="to" href={href}>
            {words}
          </Link>
        ),
      )}
    </p>
  );
}
