import { headers } from 'next/headers';

/** A whole address of this installation, to be handed to somebody: as it was set up, else as the asker reaches it. */
export async function linkHere(path: string): Promise<string> {
  const base = process.env.BEDPLATE_URL ?? `http://${(await headers()).get('host') ?? 'localhost'}`;
  return new URL(path, base).href;
}
