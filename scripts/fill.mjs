// A register with nothing in it is filled once: with the demonstration, or with one site and its administrator.
import fs from 'node:fs';
import pg from 'pg';
import { deploy } from './migrate.mjs';
import { runNode } from './run.mjs';
import { demoPassword, knownDemoPassword } from './secrets.mjs';

/** `isOurs`: the embedded database, where a filling that was broken off may be cleared away and begun anew. */
export async function fillWhenEmpty(owner, { isOurs }) {
  const state = await stateOf(owner);
  if (state === 'loaded') return;
  if (state === 'broken-off') {
    if (!isOurs) throw new Error('The first filling of this database was broken off: empty it and start again.');
    console.log('The first filling was broken off: beginning anew.');
    await onOwner(owner, 'DROP SCHEMA public CASCADE; CREATE SCHEMA public');
    await deploy(owner);
  }
  const isDemo = isOurs ? process.env.SEED !== 'none' : process.env.SEED === 'demo';
  console.log(isDemo ? 'Loading the demonstration plant ...' : 'Making the first site ...');
  const env = isDemo ? { BEDPLATE_DEMO_PASSWORD: demoPassword() } : {};
  // react-server: `server-only` throws in plain Node without it.
  const entry = isDemo ? 'seed/seed.ts' : 'seed/first-start.ts';
  const status = await runNode(['--conditions=react-server', '--import', 'tsx', entry], { env });
  if (status !== 0) throw new Error('Filling the empty register failed: see above.');
}

async function stateOf(owner) {
  const [{ sites, loaded }] = await onOwner(
    owner,
    `SELECT EXISTS (SELECT FROM site) AS sites, EXISTS (SELECT FROM audit_entry WHERE action = 'site.loaded') AS loaded`,
  );
  if (loaded) return 'loaded';
  return sites ? 'broken-off' : 'empty';
}

/** How to sign in, when it is the demonstration's people that this register has: their password is ours to tell. */
export async function signInLines(owner) {
  const accounts = JSON.parse(fs.readFileSync('seed/accounts.json', 'utf8'));
  const password = knownDemoPassword();
  const emails = accounts.map(({ email }) => email);
  const [{ people }] = await onOwner(owner, 'SELECT count(*)::int AS people FROM "user" WHERE email = ANY ($1)', [
    emails,
  ]);
  if (password === null || people < accounts.length) return [];
  const width = Math.max(...accounts.map(({ role }) => role.length));
  const sites = [...new Set(accounts.map(({ site }) => site))];
  return [
    ...sites.flatMap((site) => [
      `Sign in to the demonstration’s ${site} as`,
      ...accounts.filter((one) => one.site === site).map(({ role, email }) => `  ${role.padEnd(width)}  ${email}`),
    ]),
    `each with the password ${password}`,
  ];
}

async function onOwner(url, sql, values = undefined) {
  const client = new pg.Client(url);
  await client.connect();
  const { rows } = await client.query(sql, values).finally(() => client.end());
  return rows;
}
