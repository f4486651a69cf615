// Next behind our own HTTP server: Next would believe the client's own word on its address.
import { AsyncLocalStorage } from 'node:async_hooks';
import http from 'node:http';
import { setTimeout as pause } from 'node:timers/promises';
import { clientAddress } from './client-address.mjs';
import { MOST_BODY_BYTES, TOO_LARGE } from './most-body.mjs';
import { phoneFile } from './phone-files.mjs';

/** Ports tried after the one asked for. */
const TRIES = 50;
/** Longest wait at the end for what is being answered. */
const LAST_ANSWERS_MS = 5_000;
/** How long a client may go on sending what is too large. */
const THROWN_AWAY_MS = 2_000;

/** Next gives a page no say in its status: app/answer-status.ts leaves it here, one place a request. */
const places = new AsyncLocalStorage();
globalThis[Symbol.for('bedplate.answer-status')] = places;

let server = null;

/** Serves the app at PORT, or at the next free port, and resolves to its address. */
export async function listen({ dev, root }) {
  const hostname = process.env.HOST ?? '127.0.0.1';
  const asked = portAsked();
  const { default: next } = await import('next');
  const app = next({ dev, dir: root, hostname, port: asked });
  await app.prepare();
  const handle = app.getRequestHandler();
  const upgrade = app.getUpgradeHandler();
  server = http.createServer((request, response) => {
    if (Number(request.headers['content-length']) > MOST_BODY_BYTES) return tooLarge(request, response);
    if (phoneFile(request, response, root)) return;
    // Nobody but us may say who the client is.
    request.headers['x-client-address'] = clientAddress(
      request.socket.remoteAddress,
      request.headers['x-forwarded-for'],
    );
    const place = { status: null };
    const writeHead = response.writeHead.bind(response);
    response.writeHead = (status, ...rest) => writeHead(place.status ?? status, ...rest);
    places.run(place, () => handle(request, response));
  });
  server.on('upgrade', (request, socket, head) => upgrade(request, socket, head));
  // A client that dawdles does not keep a connection.
  server.headersTimeout = 15_000;
  server.requestTimeout = 60_000;
  const port = await bind(asked, hostname);
  process.env.PORT = String(port); // sign-in reads it when the first request loads it
  return process.env.BEDPLATE_URL ?? `http://localhost:${port}`;
}

/**
 * Answers before anything is read. What the client goes on sending is thrown away for a moment, since one whose
 * connection breaks while it sends may never look at the answer.
 */
function tooLarge(request, response) {
  const body = JSON.stringify({ type: 'about:blank', status: 413, title: TOO_LARGE });
  response.writeHead(413, {
    'content-type': 'application/problem+json',
    'content-length': Buffer.byteLength(body),
    'cache-control': 'private, no-store',
    'x-content-type-options': 'nosniff',
  });
  response.end(body);
  setTimeout(() => request.complete || request.socket.destroy(), THROWN_AWAY_MS).unref();
}

export async function stopListening() {
  if (server === null) return;
  // instrumentation.ts leaves here how the jobs are told to stop.
  const jobsStopped = globalThis[Symbol.for('bedplate.ending')]?.();
  const closed = new Promise((resolve) => server.close(resolve));
  server.closeIdleConnections();
  await Promise.race([closed, pause(LAST_ANSWERS_MS)]);
  server.closeAllConnections();
  await jobsStopped;
}

function portAsked() {
  const port = Number(process.env.PORT ?? 3000);
  if (!Number.isInteger(port) || port < 1 || port > 65_535)
    throw new Error(`PORT must be a whole number from 1 to 65535, not "${process.env.PORT}".`);
  return port;
}

async function bind(asked, hostname) {
  for (let port = asked; port < asked + TRIES && port <= 65_535; port += 1) {
    const error = await new Promise((resolve) => {
      const failed = (problem) => resolve(problem);
      server.once('error', failed);
      server.listen(port, hostname, () => {
        server.off('error', failed);
        resolve(null);
      });
    });
    if (error === null) return port;
    if (error.code === 'EACCES')
      throw new Error(`Port ${port} may not be used by this user: set PORT to one above 1023.`);
    if (error.code !== 'EADDRINUSE') throw error;
    console.log(`Port ${port} is taken: trying ${port + 1}.`);
  }
  throw new Error(`Ports ${asked} to ${asked + TRIES - 1} are all taken: set PORT to another.`);
}
