import type { Metadata } from 'next';
import Link from 'next/link';
import { type Action, may } from '@/lib/auth/may';
import { answered } from '../answered';
import { Sheet } from '../look/sheet';
import { personOf, whoIsHere } from '../who-is-here';

export const metadata: Metadata = { title: 'Desk' };

/** What is done at a desk, each with the action it asks for. */
const TASKS: readonly { href: string; words: string; says: string; needs: Action }[] = [
  { href: '/site', words: 'Site settings', says: 'Hours of work, limits, prices', needs: 'register.read' },
];

/** The desk's table of contents: what this person may do there. */
export default answered(async function DeskPage() {
  const actor = await whoIsHere('/desk');
  return (
    <Sheet person={personOf(actor)} current="/desk" back={{ href: '/', words: 'Register' }}>
      <h1 className="page">Desk</h1>
      <ul className="lines mt-4">
        {TASKS.filter(({ needs }) => may(actor, needs)).map(({ href, words, says }) => (
          <li key={href}>
            <span className="line-name">
              <Link href={href}>{words}</Link>
            </span>
            <span className="line-below">{says}</span>
          </li>
        ))}
      </ul>
    </Sheet>
  );
});
