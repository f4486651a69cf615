/** Who a person is at their plant. One role each; what it may do stands here and nowhere else. */
export const ROLES = ['technician', 'planner', 'reliability', 'administrator'] as const;
export type Role = (typeof ROLES)[number];

/** The person asking: everything they read or change lies in their site. */
export interface Actor {
  userId: string;
  siteId: string;
  role: Role;
  name: string;
}

const everyone = ROLES;
const desk = ['planner', 'reliability', 'administrator'] as const;

/** What can be asked for, and which roles may. What is not listed is refused. */
const ALLOWED = {
  'register.read': everyone,
  'frame.read': everyone,
  'set.assess': everyone,
  'swap.record': everyone,
  'fault.report': everyone,
  'fault.close': everyone,
  'motor.test': everyone,
  'picture.keep': everyone,
  // One's own password, sessions and units.
  'self.manage': everyone,
  'set.edit': desk,
  'motor.edit': desk,
  'motor.move': desk,
  'repair.decide': desk,
  'picture.retire': desk,
  'doubt.accept': desk,
  'import.run': desk,
  'register.export': desk,
  'review.read': desk,
  'review.accept': desk,
  // Read at a running set, and kept with who and when.
  'set.measure': everyone,
  'cover.read': desk,
  'audit.read': desk,
  'settings.edit': ['administrator'],
  'people.manage': ['administrator'],
  'token.manage': ['administrator'],
} as const satisfies Record<string, readonly Role[]>;

export type Action = keyof typeof ALLOWED;
export const ACTIONS = Object.keys(ALLOWED) as Action[];

export const may = ({ role }: Pick<Actor, 'role'>, action: Action): boolean =>
  (ALLOWED[action] as readonly Role[]).includes(role);

/** Raised with the data access when the door was passed by mistake; shown as "not yours to do". */
export class NotAllowed extends Error {
  override name = 'NotAllowed';
  constructor(readonly action: Action) {
    super(`Not allowed: ${action}`);
  }
}

export function must(actor: Actor, action: Action): void {
  if (!may(actor, action)) throw new NotAllowed(action);
}
