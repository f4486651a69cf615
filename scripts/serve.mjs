// Database, migrations, build, a register with something in it, server. `--dev` for development.
import fs from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { appUrl, database } from './database.mjs';
import { fillWhenEmpty, signInLines } from './fill.mjs';
import { freeJobs } from './jobs-schema.mjs';
import { deploy } from './migrate.mjs';
import { build, generate, phone } from './prepare.mjs';
import { stopChildren } from './run.mjs';
import { secret } from './secrets.mjs';
import { listen, stopListening } from './web.mjs';

const root = path.resolve(path.dirname(fileURLToPath(import.meta.url)), '..');
process.chdir(root);
if (!process.env.BEDPLATE_IGNORE_ENV_FILE && fs.existsSync('.env')) process.loadEnvFile('.env');

const dev = process.argv.includes('--dev');
process.env.NEXT_TELEMETRY_DISABLED ??= '1';
process.env.NODE_ENV ??= dev ? 'development' : 'production'; // before Next and React are loaded

let embedded = null;
let ending = null;
const end = (code) => {
  ending ??= (async () => {
    await stopListening();
    await stopChildren();
    await embedded?.stop();
    process.exit(code);
  })();
  return ending;
};
for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) process.on(signal, () => end(0));

try {
  const isGiven = Boolean(process.env.DATABASE_URL);
  process.env.BETTER_AUTH_SECRET = secret({ mustBeGiven: isGiven && !dev });
  if (!isGiven) embedded = await database({ giveUp: () => end(1) });
  const owner = embedded?.url ?? process.env.DATABASE_URL;
  for (const name of await deploy(owner)) console.log(`migrated ${name}`);
  if (embedded) await freeJobs(owner); // nobody else can be at work on a database of our own
  process.env.DATABASE_URL = embedded ? await appUrl(owner) : owner;
  await (dev ? Promise.all([generate(), phone()]) : build());
  await fillWhenEmpty(owner, { isOurs: !isGiven });
  const address = await listen({ dev, root });
  console.log(`\nBedplate is at ${address} after ${process.uptime().toFixed(1)} s. Ctrl-C stops it.`);
  for (const line of await signInLines(owner)) console.log(line);
} catch (error) {
  if (ending === null) console.error(error.message);
  await end(1);
}
