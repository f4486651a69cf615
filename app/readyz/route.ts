import { db } from '@/lib/db/client';

/** Can pages be served with their data? 503 while the database is away. */
export async function GET() {
  try {
    await db.$queryRaw`SELECT 1`;
    return Response.json({ status: 'ready' });
  } catch {
    return Response.json({ status: 'the database does not answer' }, { status: 503 });
  }
}
