import Link from 'next/link';

/** The ways to what a motor is when nothing is there to read. */
export function NoPlateLinks({ motor }: { /** The motor in the register that it is. */ motor?: string }) {
  return (
    <p className="pt-3 screen-only">
      <Link
        className="to"
        href={motor === undefined ? '/motors/no-plate' : `/motors/no-plate?${new URLSearchParams({ motor })}`}
      >
        No plate? Step by step
      </Link>{' '}
      <Link className="to ml-4" href="/frames/measure">
        The frame by a tape
      </Link>
    </p>
  );
}
