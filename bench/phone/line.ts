import net from 'node:net';
import { setTimeout as pause } from 'node:timers/promises';

/** So many pieces wait on a connection before its sender has to. */
const LONGEST_QUEUE = 16;

/** A line to the app. Bits a second and milliseconds; Infinity and 0 for as fast as the machine is. */
export interface Line {
  name: string;
  down: number;
  up: number;
  roundTripMs: number;
}

/**
 * Browsers' own "slow 4G" as their developer tools set it: 150 ms round trip times 3.75, since they delay whole requests
 * and not packets; 1.6 Mbit/s times 0.9 down, 750 kbit/s times 0.9 up. From memory: Chromium's preset.
 */
export const SLOW_4G: Line = { name: 'slow 4G', down: 1.6e6 * 0.9, up: 750e3 * 0.9, roundTripMs: 150 * 3.75 };
/** Common practice, no source: a phone in a hall with a good network. */
export const GOOD: Line = { name: 'good line', down: 20e6, up: 10e6, roundTripMs: 50 };
export const DIRECT: Line = {
  name: 'direct',
  down: Number.POSITIVE_INFINITY,
  up: Number.POSITIVE_INFINITY,
  roundTripMs: 0,
};

/**
 * Stands between the browser and the app and slows down all that passes. The tools' own throttling does not reach what a
 * worker and a service worker fetch; this does. All connections share the line.
 */
export async function lineTo(port: number) {
  let now: Line = DIRECT;
  const bytes = { down: 0, up: 0 };
  const freeAt = { down: 0, up: 0 };
  const sockets = new Set<net.Socket>();
  const pass = (from: net.Socket, to: net.Socket, way: 'down' | 'up') => {
    const queue: { at: number; chunk: Buffer | null }[] = [];
    let isBusy = false;
    // One after the other: timers of their own would not keep the order.
    const goOn = async () => {
      if (isBusy) return;
      isBusy = true;
      for (let one = queue.shift(); one !== undefined; one = queue.shift()) {
        const left = one.at - performance.now();
        if (left > 0) await pause(left);
        if (one.chunk === null) to.end();
        else if (to.writable) to.write(one.chunk);
        if (queue.length < LONGEST_QUEUE) from.resume();
      }
      isBusy = false;
    };
    const put = (chunk: Buffer | null) => {
      const size = chunk === null ? 0 : chunk.length;
      bytes[way] += size;
      freeAt[way] = Math.max(performance.now(), freeAt[way]) + (size * 8_000) / now[way];
      queue.push({ at: freeAt[way] + now.roundTripMs / 2, chunk });
      if (queue.length >= LONGEST_QUEUE) from.pause();
      void goOn();
    };
    from.on('data', put);
    from.on('end', () => put(null));
    from.on('error', () => to.destroy());
    from.on('close', () => sockets.delete(from));
  };
  const server = net.createServer((phone) => {
    const app = net.connect({ port, host: '127.0.0.1' });
    for (const socket of [phone, app]) sockets.add(socket.setNoDelay(true));
    pass(phone, app, 'up');
    pass(app, phone, 'down');
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  return {
    port: (server.address() as net.AddressInfo).port,
    bytes,
    be(line: Line) {
      now = line;
    },
    async stop() {
      for (const socket of sockets) socket.destroy();
      await new Promise((resolve) => server.close(resolve));
    },
  };
}
