import Link from 'next/link';

/** The ways to what a motor is when nothing is there to read. */
export function NoPlateLinks() {
  return (
    <p className="pt-3 screen-only">
      <Link className="to" href="/motors/no-plate">
        No plate? Step by step
      </Link>{' '}
      <Link className="to ml-4" href="/frames/measure">
        The frame by a tape
      </Link>
    </p>
  );
}
