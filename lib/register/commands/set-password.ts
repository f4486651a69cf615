import { randomUUID } from 'node:crypto';
import type { Tx } from '@/lib/db/client';

/** Puts the hash of a new password in place of the old one, or as the first. */
export async function setPassword(tx: Tx, userId: string, hash: string): Promise<void> {
  const account = { userId, providerId: 'credential' };
  const { count } = await tx.account.updateMany({ where: account, data: { password: hash } });
  if (count === 0)
    await tx.account.create({ data: { id: randomUUID(), ...account, accountId: userId, password: hash } });
}
