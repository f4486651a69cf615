/** Prisma's codes for a server that cannot be reached, a pool that waited in vain, a connection that broke. */
const CODES = new Set([
  'P1001',
  'P1002',
  'P1008',
  'P1017',
  'P2024',
  'P2028',
  'ECONNREFUSED',
  'ECONNRESET',
  '57P01',
  '57P03',
]);
const SAYS =
  /ECONNREFUSED|ECONNRESET|57P0[123]|the database system is (starting up|shutting down|in recovery mode)|Connection terminated|timeout exceeded when trying to connect|terminating connection|server closed the connection|Can't reach database/i;

/** Is the database away, rather than the question wrong? Looks through what wraps the error. */
export function isDatabaseGone(error: unknown): boolean {
  for (let at = error, depth = 0; at instanceof Error && depth < 6; at = at.cause, depth += 1)
    if (('code' in at && CODES.has(String(at.code))) || SAYS.test(at.message)) return true;
  return false;
}
