import { shell } from './shell';

/** The app at the pump, the same for everybody: what it shows lies on the phone. */
export function GET(request: Request) {
  const nonce = request.headers.get('x-nonce');
  if (nonce === null) throw new Error('The proxy gives every page its nonce.');
  return new Response(shell(nonce), {
    headers: { 'content-type': 'text/html; charset=utf-8', 'cache-control': 'no-cache' },
  });
}
