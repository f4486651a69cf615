import { Prisma } from './generated/client';

/** Somebody has just taken a name or a place that only one may have. */
export const isTaken = (error: unknown): boolean =>
  error instanceof Prisma.PrismaClientKnownRequestError && error.code === 'P2002';

/** Two that both lose to a third may meet again. */
const MOST_TRIES = 3;

/**
 * Runs a transaction. Where somebody took a name or a place in the same moment it is run anew: its own checks then find
 * it taken, and say so.
 */
export async function triedAgain<T>(run: () => Promise<T>): Promise<T> {
  for (let tries = 1; ; tries += 1) {
    try {
      return await run();
    } catch (error) {
      if (!isTaken(error) || tries === MOST_TRIES) throw error;
    }
  }
}
