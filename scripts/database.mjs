// The embedded database as the app uses it: started again when it dies, and entered as a role that owns nothing.
import { randomBytes } from 'node:crypto';
import { setTimeout as pause } from 'node:timers/promises';
import pg from 'pg';
import { defaultDataDir, startPostgres } from './pg.mjs';

const TRIES = 10;

/** Starts the embedded Postgres; when it dies under us it is started again at the same port, and pages recover. */
export async function database({ giveUp }) {
  let stopping = false;
  let server = await startPostgres({ onExit: () => again() });
  const { url, port } = server;
  let attempt = null;

  function again() {
    attempt = (async () => {
      console.error(`Postgres ended: see ${defaultDataDir()}.log. Starting it again ...`);
      for (let i = 0; i < TRIES && !stopping; i += 1) {
        try {
          server = await startPostgres({ port, onExit: () => again() });
          return console.error('Postgres is back.');
        } catch (error) {
          console.error(error.message);
          await pause(500 * (i + 1));
        }
      }
      if (!stopping) giveUp();
    })();
  }

  return {
    url,
    async stop() {
      stopping = true;
      await attempt;
      await server.stop();
    },
  };
}

/** The same database for the app's own role, which can neither alter the schema nor touch history. */
export async function appUrl(ownerUrl) {
  const password = randomBytes(24).toString('base64url'); // letters, digits, - and _: safe between quotes
  const client = new pg.Client(ownerUrl);
  await client.connect();
  await client.query(`ALTER ROLE bedplate_app LOGIN PASSWORD '${password}'`).finally(() => client.end());
  const url = new URL(ownerUrl);
  url.username = 'bedplate_app';
  url.password = password;
  return url.href;
}
