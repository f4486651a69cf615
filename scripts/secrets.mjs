// Secrets come from the environment, or are made once and kept beside the data for their owner's eyes only.
import { randomBytes } from 'node:crypto';
import fs from 'node:fs';
import path from 'node:path';
import { defaultDataDir } from './pg.mjs';

const SHORTEST = 32;
const fileOf = (name) => path.join(path.dirname(defaultDataDir()), name);

/** What sessions are signed with. Kept, so that people stay signed in over a restart. */
export function secret({ mustBeGiven }) {
  const given = process.env.BETTER_AUTH_SECRET;
  if (given === undefined) {
    if (mustBeGiven)
      throw new Error(
        `DATABASE_URL is set, so BETTER_AUTH_SECRET must be too: at least ${SHORTEST} random characters.`,
      );
    return kept('secret', () => randomBytes(32).toString('base64url'));
  }
  if (given.length < SHORTEST) throw new Error(`BETTER_AUTH_SECRET is too short: at least ${SHORTEST} characters.`);
  return given;
}

/** The one password of the demonstration's people: given, or made for this installation. */
export function demoPassword() {
  return process.env.BEDPLATE_DEMO_PASSWORD ?? kept('demo-password', readable);
}

/** The demonstration's password when it was made before; null when there is none. */
export function knownDemoPassword() {
  if (process.env.BEDPLATE_DEMO_PASSWORD) return process.env.BEDPLATE_DEMO_PASSWORD;
  const file = fileOf('demo-password');
  return fs.existsSync(file) ? fs.readFileSync(file, 'utf8') : null;
}

function kept(name, make) {
  const file = fileOf(name);
  fs.mkdirSync(path.dirname(file), { recursive: true });
  if (!fs.existsSync(file)) fs.writeFileSync(file, make(), { mode: 0o600 });
  return fs.readFileSync(file, 'utf8');
}

/** Four groups of letters that are not taken for one another, easy to type on a phone: 75 bits. */
function readable() {
  const letters = 'abcdefghjkmnpqrtuvwxyz234679';
  const group = () => Array.from(randomBytes(4), (byte) => letters[byte % letters.length]).join('');
  return [group(), group(), group(), group()].join('-');
}
