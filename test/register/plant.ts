import { randomUUID } from 'node:crypto';
import type { Actor, Role } from '@/lib/auth/may';
import { db } from '@/lib/db/client';
import { defaultSettings } from '@/lib/matching/default-settings';
import type { MotorInput } from '@/lib/plant/motor';
import type { SiteSettings } from '@/lib/plant/site-settings';
import { WORK_IDS } from '@/lib/plant/work';
import { type NewMotor, registerMotors } from '@/lib/register/commands/register-motors';
import { registerPlaces } from '@/lib/register/commands/register-places';
import { type NewSet, registerSets } from '@/lib/register/commands/register-sets';
import { registerSite } from '@/lib/register/commands/register-site';
import type { SwapRequest } from '@/lib/register/commands/swap-request';

export const settings: SiteSettings = {
  ...defaultSettings,
  hours: Object.fromEntries(WORK_IDS.map((id) => [id, 1])) as SiteSettings['hours'],
  pricePerKwh: 0.12,
  currency: 'EUR',
  hoursPerYear: 6000,
  shimLimitMm: 6,
};

/** A site of its own with somebody in it. Names are invented. */
export async function someone(role: Role = 'planner', name = 'Ida Fenn'): Promise<Actor> {
  const siteId = await registerSite({ name: `Site ${randomUUID()}`, timezone: 'Europe/Copenhagen', settings });
  return colleague(siteId, role, name);
}

/** Another person at the site. Nobody signs in as them, so they need no password. */
export async function colleague(siteId: string, role: Role, name: string): Promise<Actor> {
  const id = randomUUID();
  await db.user.create({ data: { id, siteId, role, name, email: `${id}@example.com` } });
  return { userId: id, siteId, role, name };
}

export const plate = (id: string): MotorInput => ({
  id,
  kind: 'cage',
  frame: '184T',
  phases: 3,
  poles: 4,
  leads: 9,
  ratings: [
    { volts: 460, hertz: 60, hp: 5, rpm: 1750, amps: 6.6 },
    { volts: 400, hertz: 50, kw: 3.7, rpm: 1450, amps: 7.4 },
  ],
  serviceFactor: 1.15,
  enclosure: 'TEFC',
  ip: 'IP55',
});

export const plainSet = (tag: string, more: Partial<NewSet> = {}): NewSet => ({
  set: {
    tag,
    mounting: 'foot',
    shaftDirection: 'horizontal',
    base: { shimLimitMm: 6, shimsPresentMm: 1.5 },
    supply: { phases: 3, volts: 460, hertz: 60, start: 'direct', overloadMinA: 5, overloadMaxA: 9 },
    load: { kind: 'constant-torque', shaftKw: 3.1, atPumpRpm: 350 },
  },
  ...more,
});

export async function addSets(actor: Actor, ...sets: NewSet[]): Promise<Map<string, string>> {
  const done = await registerSets(actor, sets);
  if (done.outcome !== 'saved') throw new Error(JSON.stringify(done.problems));
  return done.ids;
}

export async function addMotors(actor: Actor, ...motors: NewMotor[]): Promise<Map<string, string>> {
  const done = await registerMotors(actor, motors);
  if (done.outcome !== 'saved') throw new Error(JSON.stringify(done.problems));
  return done.ids;
}

/** A site with sets P-101 and P-102, M-1 and M-2 in them, M-7 and M-8 on a shelf. */
export async function smallPlant() {
  const actor = await someone();
  const { shelves } = await registerPlaces(actor, { areas: [], stores: [{ name: 'Main', shelves: ['A1'] }] });
  const shelfId = got(shelves, 'Main / A1');
  const sets = await addSets(actor, plainSet('P-101', { criticality: 1 }), plainSet('P-102', { criticality: 3 }));
  const motors = await addMotors(
    actor,
    { motor: plate('M-1'), at: { place: 'in-set', setId: got(sets, 'P-101') } },
    { motor: plate('M-2'), at: { place: 'in-set', setId: got(sets, 'P-102') } },
    { motor: plate('M-7'), at: { place: 'on-shelf', shelfId } },
    { motor: plate('M-8'), at: { place: 'on-shelf', shelfId } },
  );
  const swap = (tag: string, out: string, into: string, more: Partial<SwapRequest> = {}): SwapRequest => ({
    key: randomUUID(),
    setId: got(sets, tag),
    motorOutId: got(motors, out),
    motorInId: got(motors, into),
    fromSetId: null,
    outTo: { place: 'at-repair' },
    why: 'Bearing',
    note: null,
    workDone: [],
    checks: [],
    insulationMohm: null,
    overloadA: null,
    shimsPresentMm: null,
    doneAt: null,
    readings: null,
    ...more,
  });
  return { actor, sets, motors, shelfId, swap };
}

export function got(map: Map<string, string>, key: string): string {
  const value = map.get(key);
  if (value === undefined) throw new Error(`no ${key}`);
  return value;
}
