import { randomUUID } from 'node:crypto';
import { record } from '@/lib/audit/record';
import { type Actor, must, type Role } from '@/lib/auth/may';
import { hashed, passwordProblem } from '@/lib/auth/password';
import { db } from '@/lib/db/client';

export interface NewPerson {
  siteId: string;
  name: string;
  email: string;
  role: Role;
  password: string;
}

/** Adds a person who can sign in. Throws on a password or address that cannot be. `by` null: the program itself. */
export async function registerPerson(by: Actor | null, person: NewPerson): Promise<Actor> {
  if (by) must(by, 'people.manage');
  const { siteId, name, role, password } = person;
  const email = person.email.trim().toLowerCase();
  const problem = passwordProblem(password);
  if (problem) throw new Error(`The password for ${email} ${problem}.`);
  const id = randomUUID();
  const hash = await hashed(password);
  await db.$transaction(async (tx) => {
    await tx.user.create({ data: { id, siteId, name, email, role, emailVerified: true } });
    await tx.account.create({
      data: { id: randomUUID(), userId: id, accountId: id, providerId: 'credential', password: hash },
    });
    const who = { siteId, userId: by?.userId ?? null };
    await record(tx, who, { action: 'person.register', thing: 'person', thingId: id, after: { role } });
  });
  return { userId: id, siteId, role, name };
}
