import Link from 'next/link';
import { type Actor, may } from '@/lib/auth/may';

/** From a record's history to how it stood on a day, and to all that the audit tells of it; for who may read the audit. */
export function AuditLinks({ actor, name, onPath }: { actor: Actor; name: string; onPath: string }) {
  if (!may(actor, 'audit.read')) return null;
  return (
    <div className="screen-only">
      <p className="flex flex-wrap gap-x-4 gap-y-5 pt-3">
        <Link className="to" href={onPath}>
          As it stood on a day
        </Link>
        <Link className="to" href={`/audit?name=${encodeURIComponent(name)}`}>
          Everything the audit tells
        </Link>
      </p>
    </div>
  );
}
