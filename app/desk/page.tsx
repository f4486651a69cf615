import type { Metadata } from 'next';
import Link from 'next/link';
import { type Action, may } from '@/lib/auth/may';
import { answered } from '../answered';
import { Sheet } from '../look/sheet';
import { personOf, whoMay } from '../who-is-here';

export const metadata: Metadata = { title: 'Desk' };

/** What is done at a desk, each with the action it asks for. */
const TASKS: readonly { href: string; words: string; says: string; needs: Action }[] = [
  {
    href: '/sets/new',
    words: 'Enter a set',
    says: 'What is installed, and what it asks of its motor',
    needs: 'set.edit',
  },
  { href: '/motors/new', words: 'Enter a motor', says: 'From its plate, pasted or typed', needs: 'motor.edit' },
  {
    href: '/motors/no-plate',
    words: 'A motor without a plate',
    says: 'What it is, found out step by step',
    needs: 'frame.read',
  },
  {
    href: '/frames/measure',
    words: 'Frame by a tape',
    says: 'Which frames it can be by what was measured',
    needs: 'frame.read',
  },
  { href: '/imports', words: 'Import', says: 'Lists of nameplates, from CSV or XLSX', needs: 'import.run' },
  { href: '/faults', words: 'Faults', says: 'What stands, since when; how long it took', needs: 'register.read' },
  { href: '/cover', words: 'Cover', says: 'Which shelf motors could stand in for which sets', needs: 'register.read' },
  { href: '/hold', words: 'What to hold', says: 'Which spare motors, and how many of each', needs: 'register.read' },
  {
    href: '/buy',
    words: 'One motor for several sets',
    says: 'What to ask a supplier for, and where it would serve',
    needs: 'set.assess',
  },
  {
    href: '/reports/now',
    words: 'Report of the month',
    says: 'Faults and how long, swaps, repairs, sets without a spare',
    needs: 'register.read',
  },
  { href: '/repairs', words: 'Motors at repair', says: 'Since when, what each waits for', needs: 'register.read' },
  { href: '/labels', words: 'Labels', says: 'For sets and motors, to be scanned', needs: 'register.read' },
  { href: '/doubts', words: 'Doubts', says: 'What cannot be right on a plate or a set', needs: 'doubt.accept' },
  {
    href: '/review',
    words: 'Set review',
    says: 'Which sets do not suit their motor, and what would put them right',
    needs: 'review.read',
  },
  { href: '/areas', words: 'Areas', says: 'The parts of the plant and what surrounds their sets', needs: 'set.edit' },
  { href: '/stores/places', words: 'Stores and shelves', says: 'Where spare motors wait', needs: 'set.edit' },
  { href: '/audit', words: 'Audit', says: 'Who changed what, from what to what', needs: 'audit.read' },
  { href: '/site', words: 'Site settings', says: 'Hours of work, limits, prices', needs: 'register.read' },
  { href: '/people', words: 'People', says: 'Who may come in, as what; invitations', needs: 'people.manage' },
  { href: '/api-docs', words: 'API', says: 'How programs ask, and what they are answered', needs: 'register.read' },
  { href: '/tokens', words: 'Tokens', says: 'By which programs ask', needs: 'token.manage' },
];

/** The desk's table of contents: what this person may do there. */
export default answered(async function DeskPage() {
  const actor = await whoMay('register.read', '/desk');
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
