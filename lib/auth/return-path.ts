/** Where to go after signing in: a path of this site, else the first page. What names another site is not followed. */
export function returnPath(asked: unknown): string {
  if (typeof asked !== 'string' || asked.length > 2_000 || !asked.startsWith('/') || /[\\\p{Cc}]/u.test(asked))
    return '/';
  const here = 'http://here.invalid';
  const url = URL.canParse(asked, here) ? new URL(asked, here) : null;
  if (url === null || url.origin !== here) return '/';
  return /^\/(sign-in|sign-out|api)(\/|$)/.test(url.pathname) ? '/' : `${url.pathname}${url.search}`;
}
