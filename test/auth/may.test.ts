import fs from 'node:fs';
import { expect, test } from 'vitest';
import { ACTIONS, may, must, ROLES, type Role } from '@/lib/auth/may';

/** Who may do what, as the plant has it: the technician swaps, the desk keeps the register, the administrator the people. */
const EVERYONE = [
  'register.read',
  'frame.read',
  'set.assess',
  'swap.record',
  'fault.report',
  'fault.close',
  'motor.test',
  'picture.keep',
  'set.measure',
  'self.manage',
];
const DESK = [
  'set.edit',
  'motor.edit',
  'motor.move',
  'repair.decide',
  'picture.retire',
  'doubt.accept',
  'import.run',
  'register.export',
  'review.read',
  'review.accept',
  'cover.read',
  'audit.read',
];
const ADMINISTRATOR = ['settings.edit', 'people.manage', 'token.manage'];

test('S24 each role may do what is listed here, and nothing else', () => {
  const allowed: Record<Role, string[]> = {
    technician: EVERYONE,
    planner: [...EVERYONE, ...DESK],
    reliability: [...EVERYONE, ...DESK],
    administrator: [...EVERYONE, ...DESK, ...ADMINISTRATOR],
  };
  for (const role of ROLES)
    expect(ACTIONS.filter((action) => may({ role }, action)).sort()).toEqual(allowed[role].sort());
});

test('S24 a role or an action that is not known is refused', () => {
  expect(may({ role: 'king' as Role }, 'register.read')).toBe(false);
  const actor = { userId: 'u', siteId: 's', role: 'technician', name: 'Bo' } as const;
  expect(() => must(actor, 'set.edit')).toThrow('Not allowed: set.edit');
});

test('S27 every query and command of the register asks whether the actor may', () => {
  const asksNot = ['queries', 'commands'].flatMap((folder) =>
    fs
      .readdirSync(`lib/register/${folder}`)
      .map((file) => `${folder}/${file}`)
      .filter((file) => /\bactor: Actor\b/.test(fs.readFileSync(`lib/register/${file}`, 'utf8')))
      .filter((file) => !/\bmust\(actor, '/.test(fs.readFileSync(`lib/register/${file}`, 'utf8'))),
  );
  // Steps of a command, which asked before: they take the actor on.
  expect(asksNot.filter((file) => !/commands\/(move|close|repair|export)-step\.ts/.test(file))).toEqual([]);
});
