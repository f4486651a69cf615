import { createFirstAdministrator } from '@/lib/register/commands/create-first-administrator';

/** Makes the first administrator and says so, once: the password is kept nowhere in the open. */
export async function announceFirstAdministrator(siteId: string): Promise<void> {
  const made = await createFirstAdministrator(siteId, {
    email: process.env.BEDPLATE_ADMIN_EMAIL,
    password: process.env.BEDPLATE_ADMIN_PASSWORD,
  });
  if (!made) return;
  const how = made.password === null ? 'the password of BEDPLATE_ADMIN_PASSWORD' : `the password ${made.password}`;
  console.log(`First administrator: ${made.email} with ${how}. This is said once.`);
}
