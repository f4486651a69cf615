import type { Actor, Role } from '@/lib/auth/may';
import { ROLES } from '@/lib/auth/may';
import { registerPerson } from '@/lib/register/commands/register-person';
import accounts from './accounts.json' with { type: 'json' };

/** The demonstration's sites. */
export const SITES = ['Harrowmere', 'Saltgarth'] as const;

/**
 * The people of one of the demonstration's sites, one a role, all with one password. It is made up for this installation and given in
 * BEDPLATE_DEMO_PASSWORD by scripts/start.mjs, which prints it: no password is the same everywhere.
 */
export async function demoAccounts(
  siteId: string,
  site: (typeof SITES)[number] = 'Harrowmere',
): Promise<Record<Role, Actor>> {
  const password = process.env.BEDPLATE_DEMO_PASSWORD;
  if (password === undefined) throw new Error('BEDPLATE_DEMO_PASSWORD is not set: the demonstration needs it.');
  const made = new Map<string, Actor>();
  for (const { role, name, email } of accounts.filter((one) => one.site === site)) {
    const known = ROLES.find((each) => each === role);
    if (!known) throw new Error(`No such role: ${role}`);
    made.set(role, await registerPerson(null, { siteId, name, email, role: known, password }));
  }
  const of = (role: Role): Actor => {
    const actor = made.get(role);
    if (!actor) throw new Error(`seed/accounts.json has no ${role} of ${site}`);
    return actor;
  };
  return {
    technician: of('technician'),
    planner: of('planner'),
    reliability: of('reliability'),
    administrator: of('administrator'),
  };
}
