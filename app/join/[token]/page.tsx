import type { Metadata } from 'next';
import { answered } from '@/app/answered';
import { joinHere } from '@/app/link-forms';
import { LinkSheet } from '@/app/link-sheet';
import { linkBySecret } from '@/lib/register/queries/link-by-secret';

export const metadata: Metadata = { title: 'Invitation' };

/** An invitation as its holder sees it. Looking does not use it up: mail programs look at links too. */
export default answered(async function JoinPage({ params }: PageProps<'/join/[token]'>) {
  const { token } = await params;
  return (
    <LinkSheet
      link={await linkBySecret(token, 'invite')}
      secret={token}
      title="You are invited"
      says="Choose a password. From then on you sign in with it and with your e-mail."
      action={joinHere}
    />
  );
});
