import { problem } from './problem';

/** What can be asked at each path. Plain, since every request passes here; a test holds it against the routes. */
export const METHODS_AT: Readonly<Record<string, readonly string[]>> = {
  '/sets': ['GET', 'POST'],
  '/sets/{tag}': ['GET', 'PATCH'],
  '/sets/{tag}/findings': ['GET'],
  '/purchase': ['GET'],
  '/motors': ['GET', 'POST'],
  '/motors/{number}': ['GET', 'PATCH'],
  '/swaps': ['POST'],
  '/areas': ['GET', 'POST'],
  '/stores': ['GET', 'POST'],
  '/shelves': ['GET', 'POST'],
  '/assess': ['POST'],
  '/plate': ['POST'],
  '/frames/{frame}': ['GET'],
  '/imports': ['POST'],
  '/imports/{id}': ['GET'],
  '/imports/{id}/rows': ['GET'],
  '/imports/{id}/columns': ['POST'],
  '/imports/{id}/steps': ['POST'],
  '/openapi.json': ['GET'],
};

const PATTERNS = Object.entries(METHODS_AT).map(([path, methods]) => ({
  pattern: new RegExp(`^/api/v1${path.replaceAll('.', '\\.').replaceAll(/\{\w+\}/g, '[^/]+')}/?$`),
  methods,
}));

/** The answer to a path or a method that the API has not, in the shape of its other refusals; null: it has it. */
export function notThere(pathname: string, method: string): Response | null {
  if (!/^\/api\/v1(\/|$)/.test(pathname)) return null;
  const methods = PATTERNS.find(({ pattern }) => pattern.test(pathname))?.methods;
  if (methods === undefined) return problem(404, 'There is nothing at this address.');
  // Those two are answered everywhere (RFC 9110, 9.3.2 and 9.3.7).
  const allowed = [...methods, ...(methods.includes('GET') ? ['HEAD'] : []), 'OPTIONS'];
  if (allowed.includes(method)) return null;
  const refused = problem(405, `This address takes ${methods.join(' or ')}.`);
  refused.headers.set('allow', allowed.join(', '));
  return refused;
}
