import { randomBytes } from 'node:crypto';
import { db } from '@/lib/db/client';
import { registerPerson } from './register-person';

export interface FirstAdministrator {
  email: string;
  /** Null: it came from the environment, so whoever set it knows it. */
  password: string | null;
}

/**
 * The first administrator, from BEDPLATE_ADMIN_EMAIL and BEDPLATE_ADMIN_PASSWORD or with a password made up here.
 * Null when there is an administrator: the way is closed for good once somebody has gone through it.
 */
export async function createFirstAdministrator(
  siteId: string,
  env: { email: string | undefined; password: string | undefined },
): Promise<FirstAdministrator | null> {
  if ((await db.user.count({ where: { role: 'administrator' } })) > 0) return null;
  const email = env.email ?? 'administrator@example.com';
  const password = env.password ?? randomBytes(15).toString('base64url');
  await registerPerson(null, { siteId, name: 'Administrator', email, role: 'administrator', password });
  return { email, password: env.password === undefined ? password : null };
}
