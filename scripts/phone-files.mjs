// Serves what scripts/phone.mjs wrote. Everything but the service worker bears the sum of its content in its name.
import fs from 'node:fs';
import path from 'node:path';

const TYPES = {
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.wasm': 'application/wasm',
  '.woff2': 'font/woff2',
};

/** Answers a request for a file of the phone and says so; false: it is for somebody else. */
export function phoneFile(request, response, root) {
  const { pathname } = new URL(request.url, 'http://here');
  const name = pathname === '/sw.js' ? 'sw.js' : /^\/phone\/([\w.-]+)$/.exec(pathname)?.[1];
  if (name === undefined) return false;
  const file = path.join(root, '.phone', name);
  const type = TYPES[path.extname(name)];
  if (!['GET', 'HEAD'].includes(request.method)) return refuse(response, 405, { allow: 'GET, HEAD' });
  if (type === undefined || !fs.existsSync(file)) return refuse(response, 404);
  const packed = packedAs(request.headers['accept-encoding'], file);
  const content = packed === null ? file : `${file}.${packed.ending}`;
  response.writeHead(200, {
    'content-type': type,
    'content-length': fs.statSync(content).size,
    'cache-control': name === 'sw.js' ? 'no-cache' : 'public, max-age=31536000, immutable',
    'x-content-type-options': 'nosniff',
    'cross-origin-resource-policy': 'same-origin',
    vary: 'accept-encoding',
    ...(packed !== null && { 'content-encoding': packed.word }),
    // A worker is judged by the policy it comes with.
    'content-security-policy':
      "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; connect-src 'self'; frame-ancestors 'none'; base-uri 'none'",
  });
  if (request.method === 'HEAD') response.end();
  else fs.createReadStream(content).pipe(response);
  return true;
}

function packedAs(accepted, file) {
  const words = String(accepted ?? '')
    .split(/\s*,\s*/)
    .map((word) => word.split(';')[0]);
  const known = [
    { word: 'br', ending: 'br' },
    { word: 'gzip', ending: 'gz' },
  ];
  return known.find(({ word, ending }) => words.includes(word) && fs.existsSync(`${file}.${ending}`)) ?? null;
}

function refuse(response, status, headers = {}) {
  response.writeHead(status, { 'content-length': 0, 'x-content-type-options': 'nosniff', ...headers });
  response.end();
  return true;
}
