import { spawn } from 'node:child_process';
import { rmSync } from 'node:fs';
import net from 'node:net';
import { setTimeout as pause } from 'node:timers/promises';
import { runningUrl } from '../../scripts/pg.mjs';

const STARTED_MS = 240_000;
const STOPPED_MS = 20_000;

/** The built app on a data folder and a port of its own. `databaseUrl` is the owner's. */
export async function startApp(dataDir: string) {
  const port = await freePort();
  const child = spawn(process.execPath, ['scripts/start.mjs'], {
    stdio: ['ignore', 'ignore', 'inherit'],
    env: {
      ...process.env,
      PORT: String(port),
      BEDPLATE_DATA: dataDir,
      BEDPLATE_IGNORE_ENV_FILE: '1',
      NODE_ENV: 'production',
      SEED: 'none',
      DATABASE_URL: '',
    },
  });
  const gone = new Promise<void>((resolve) => child.once('exit', () => resolve()));
  const stop = async () => {
    child.kill('SIGTERM');
    await Promise.race([gone, pause(STOPPED_MS)]);
    child.kill('SIGKILL');
    rmSync(dataDir, { recursive: true, force: true });
  };
  for (const signal of ['SIGINT', 'SIGTERM']) process.once(signal, () => void stop().then(() => process.exit(1)));
  const until = Date.now() + STARTED_MS;
  while (!(await answers(port))) {
    if (Date.now() > until || child.exitCode !== null) {
      await stop();
      throw new Error('The app does not start.');
    }
    await pause(500);
  }
  const databaseUrl = runningUrl(`${dataDir}/pg`);
  if (databaseUrl === null) throw new Error('The app runs without a database of its own.');
  return { port, databaseUrl, stop };
}

const answers = (port: number) =>
  fetch(`http://127.0.0.1:${port}/readyz`, { signal: AbortSignal.timeout(5_000) }).then(
    ({ ok }) => ok,
    () => false,
  );

async function freePort(): Promise<number> {
  const server = net.createServer();
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const { port } = server.address() as net.AddressInfo;
  await new Promise((resolve) => server.close(resolve));
  return port;
}
