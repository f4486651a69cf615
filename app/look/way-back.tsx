import Link from 'next/link';

/** The way back; without one the name of the program leads to `home`. */
export function WayBack({ back, home }: { back: { href: string; words: string } | undefined; home: string }) {
  if (back === undefined)
    return (
      <Link className="brand" href={home}>
        Bedplate
      </Link>
    );
  return (
    <Link className="back" href={back.href}>
      <svg viewBox="0 0 24 24" fill="none" stroke="currentColor" strokeWidth="2" aria-hidden="true">
        <path d="m15 4-8 8 8 8" />
      </svg>
      <span>
        <bdi>{back.words}</bdi>
      </span>
    </Link>
  );
}
