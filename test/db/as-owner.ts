import pg from 'pg';

/** Runs SQL as the owner of this test file's database, past the role the program works as. */
export async function asOwner(sql: string) {
  const client = new pg.Client(process.env.DATABASE_URL);
  await client.connect();
  return client.query(sql).finally(() => client.end());
}
