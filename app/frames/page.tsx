import type { Metadata } from 'next';
import Link from 'next/link';
import { redirect } from 'next/navigation';
import { answered } from '../answered';
import { Sheet } from '../look/sheet';
import { framePath, oneLine } from '../paths';
import { personOf, whoMay } from '../who-is-here';
import { FrameForm } from './frame-form';

export const metadata: Metadata = { title: 'Frames' };

/** Asks for a frame; the answer has its own address. */
export default answered(async function FramesPage({ searchParams }: PageProps<'/frames'>) {
  const asked = await searchParams;
  const actor = await whoMay('frame.read', '/frames');
  const [frame, mounting, poles] = [textOf(asked.frame), textOf(asked.mounting), textOf(asked.poles)];
  const more = new URLSearchParams({ ...(mounting !== '' && { mounting }), ...(poles !== '' && { poles }) }).toString();
  if (frame !== '') redirect(`${framePath(frame)}${more === '' ? '' : `?${more}`}`);
  return (
    <Sheet wide current="/frames" person={personOf(actor)}>
      <h1 className="page">Frames</h1>
      <p className="mt-2">
        What the standards fix of a motor’s mounting: feet, shaft and face, each figure with where it comes from.
      </p>
      <p className="pt-3">
        <Link className="to" href="/frames/measure">
          Which frame is it? By a tape
        </Link>{' '}
        <Link className="to" href="/motors/no-plate">
          A motor without a plate
        </Link>
      </p>
      <FrameForm frame="" mounting={mounting} poles={poles} />
    </Sheet>
  );
});

const textOf = (value: string | string[] | undefined) => (typeof value === 'string' ? oneLine(value).slice(0, 40) : '');
