import type { FrameFound } from '@/lib/standards/measured/frames-measured';
import { nameOf } from '@/lib/standards/measured/name-of';

const MOST = 6;

/** The frames that are left, in a line. */
export function LeftSoFar({ fits }: { fits: readonly FrameFound[] }) {
  const names = fits.map(({ option }) => nameOf(option));
  return (
    <p className="pt-3">
      {names.length === 0
        ? 'No frame known here agrees with what was measured so far.'
        : `Left so far: ${names.slice(0, MOST).join('; ')}${names.length > MOST ? ` and ${names.length - MOST} more` : ''}.`}
    </p>
  );
}
