import pg from 'pg';

/** Works on a connection of its own, so that a transaction can be left open while others commit. */
export async function onClient(work: (client: pg.Client) => Promise<void>): Promise<void> {
  const client = new pg.Client(process.env.DATABASE_URL);
  await client.connect();
  await work(client).finally(() => client.end());
}
