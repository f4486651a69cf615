import type { Metadata } from 'next';
import { answered } from '@/app/answered';
import { resetByLinkHere } from '@/app/link-forms';
import { LinkSheet } from '@/app/link-sheet';
import { linkBySecret } from '@/lib/register/queries/link-by-secret';

export const metadata: Metadata = { title: 'New password' };

/** A reset link as its holder sees it. Looking does not use it up. */
export default answered(async function ResetPage({ params }: PageProps<'/reset/[token]'>) {
  const { token } = await params;
  return (
    <LinkSheet
      link={await linkBySecret(token, 'reset')}
      secret={token}
      title="A new password"
      says="It takes the place of the old one, and ends every session begun with that."
      action={resetByLinkHere}
    />
  );
});
