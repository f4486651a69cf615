import { z } from 'zod';
import { THEMES } from '../look/theme';

const asked = z.strictObject({ theme: z.enum(THEMES) });

/** Keeps the chosen sheet in a cookie and goes back to the page it was chosen on. Works without script. */
export async function POST(request: Request) {
  if (!request.headers.get('content-type')?.startsWith('application/x-www-form-urlencoded'))
    return problem(415, 'Send the form as application/x-www-form-urlencoded.');
  const form = asked.safeParse(Object.fromEntries(await request.formData()));
  if (!form.success) return problem(422, 'The form has one field, theme, which is day or night.');
  const secure = process.env.BEDPLATE_URL?.startsWith('https:') ? '; Secure' : '';
  return new Response(null, {
    status: 303,
    headers: {
      location: pathOf(request.headers.get('referer'), request.headers.get('host')),
      'set-cookie': `theme=${form.data.theme}; Path=/; Max-Age=31536000; SameSite=Lax; HttpOnly${secure}`,
    },
  });
}

/** The page it was asked from when that is of this site, else the first page. */
function pathOf(referer: string | null, host: string | null): string {
  if (referer === null || !URL.canParse(referer)) return '/';
  const from = new URL(referer);
  // A path may not begin with two slashes: a browser would read a host into it.
  return from.host === host ? `/${from.pathname.replace(/^\/+/, '')}${from.search}` : '/';
}

const problem = (status: number, title: string) =>
  Response.json({ status, title }, { status, headers: { 'content-type': 'application/problem+json' } });
