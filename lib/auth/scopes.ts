import type { Action } from './may';

/** What a token may be made for. Its owner's role bounds it besides. */
export const SCOPES = ['read', 'write', 'assess'] as const;
export type Scope = (typeof SCOPES)[number];

const read = ['read'] as const;
const write = ['write'] as const;
/** People, tokens and one's own password are not for programs: a token that leaked would make itself more of them. */
const never = [] as const;

/** Any one of these scopes lets a token ask for the action. Every action stands here, or the program does not compile. */
const NEEDED: Record<Action, readonly Scope[]> = {
  'register.read': read,
  'frame.read': read,
  'set.assess': ['assess', 'write'],
  'swap.record': write,
  'fault.report': write,
  'fault.close': write,
  'motor.test': write,
  'picture.keep': write,
  'self.manage': never,
  'set.edit': write,
  'motor.edit': write,
  'motor.move': write,
  'repair.decide': write,
  'picture.retire': write,
  'doubt.accept': write,
  'import.run': write,
  'register.export': read,
  'review.read': read,
  'review.accept': write,
  'set.measure': write,
  'cover.read': read,
  'audit.read': read,
  'settings.edit': write,
  'people.manage': never,
  'token.manage': never,
};

/** The scopes of which a token needs one. What is not merely fetched is never done by reading rights alone. */
export function scopesFor(action: Action, method: string): readonly Scope[] {
  const needed = NEEDED[action];
  return needed === read && !['GET', 'HEAD'].includes(method) ? write : needed;
}
