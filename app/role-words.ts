import { ROLES, type Role } from '@/lib/auth/may';

export const ROLE_WORDS: Record<Role, string> = {
  technician: 'Technician',
  planner: 'Planner',
  reliability: 'Reliability engineer',
  administrator: 'Administrator',
};

export const ROLE_OPTIONS = ROLES.map((value) => ({ value, words: ROLE_WORDS[value] }));

/** What was typed as a role; null when it is none. */
export const readRole = (text: string): Role | null => ROLES.find((role) => role === text) ?? null;
