const NEVER_KEPT = { 'cache-control': 'private, no-store' };

/** Leads a browser that sent a form to a page. */
export const ledTo = (path: string): Response =>
  new Response(null, { status: 303, headers: { location: path, ...NEVER_KEPT } });

/** A refusal for a person whose browser shows it as it stands. */
export const plainly = (status: number, says: string): Response =>
  new Response(`${says}\n\nYour browser’s way back leads to the form.\n`, {
    status,
    headers: { 'content-type': 'text/plain; charset=utf-8', ...NEVER_KEPT },
  });
