import type { Problem } from '@/lib/plant/reading';

/** What is wrong with the body of a message, told where it stands in the message. */
export const inBody = (problems: readonly Problem[]): { outcome: 'refused'; problems: Problem[] } => ({
  outcome: 'refused',
  problems: problems.map((one) => ({ ...one, path: one.path === 'key' ? 'key' : `body.${one.path}` })),
});
