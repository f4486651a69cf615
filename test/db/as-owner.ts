import pg from 'pg';

/** Runs SQL as the owner of this test file's database, past the role the program works as. */
export const asOwner = (sql: string) => run(String(process.env.DATABASE_URL), sql);

/** Runs SQL from beside this test file's database, and tells the SQL's maker what that is called. */
export function besideIt(sql: (name: string) => string) {
  const url = new URL(String(process.env.DATABASE_URL));
  const name = url.pathname.slice(1);
  url.pathname = '/template1';
  return run(url.href, sql(name));
}

async function run(url: string, sql: string) {
  const client = new pg.Client(url);
  await client.connect();
  return client.query(sql).finally(() => client.end());
}
