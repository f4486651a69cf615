import type { Metadata } from 'next';
import Link from 'next/link';
import { people } from '@/lib/register/queries/people';
import { siteSettings } from '@/lib/register/queries/site-settings';
import { type KnownToken, tokens } from '@/lib/register/queries/tokens';
import { answered } from '../answered';
import { AskForm } from '../ask-form';
import { SectionHead } from '../look/section-head';
import { Sheet } from '../look/sheet';
import { momentText } from '../moment';
import { personOf, whoMay } from '../who-is-here';
import { makeTokenHere, revokeTokenHere } from './ask-tokens';

export const metadata: Metadata = { title: 'Tokens' };

/** By which programs ask: each token with its person, its scopes and its end. */
export default answered(async function TokensPage() {
  const actor = await whoMay('token.manage', '/tokens');
  const [listed, known, { timezone }] = await Promise.all([tokens(actor), people(actor), siteSettings(actor)]);
  const owners = known.people
    .filter(({ retiredAt }) => retiredAt === null)
    .map(({ userId, name }) => ({ value: userId, words: name }));
  return (
    <Sheet person={personOf(actor)} current="/desk" back={{ href: '/desk', words: 'Desk' }}>
      <h1 className="page">Tokens</h1>
      <p className="mt-2">
        A program asks by a token as its person does, and never more than the token allows.{' '}
        <Link className="to" href="/api-docs">
          What it can ask
        </Link>
      </p>
      <SectionHead title="Made here" aside={listed.tokens.length} />
      {listed.tokens.length === 0 && <p className="pt-3">None yet.</p>}
      <ul className="lines">
        {listed.tokens.map((token) => (
          <TokenLine key={token.tokenId} token={token} timezone={timezone} />
        ))}
      </ul>
      {!listed.isAll && <p className="mt-2">The first {listed.tokens.length} are shown.</p>}
      <SectionHead title="Make one" />
      <AskForm
        id="token-form"
        action={makeTokenHere}
        fields={[
          { kind: 'text', name: 'name', label: 'Name', hint: 'Which program, and where.', autoComplete: 'off' },
          { kind: 'list', name: 'ownerId', label: 'Asks as', options: owners, value: actor.userId },
          {
            kind: 'ticks',
            name: 'scopes',
            label: 'What it may do',
            options: [
              { value: 'read', words: 'Read the register' },
              { value: 'assess', words: 'Have candidates judged' },
              { value: 'write', words: 'Change the register' },
            ],
            values: ['read'],
          },
          { kind: 'figure', name: 'days', label: 'Good for', unit: 'days', value: '90', hint: 'At most 365.' },
        ]}
        button="Make the token"
        main
      />
    </Sheet>
  );
});

function TokenLine({ token, timezone }: { token: KnownToken; timezone: string }) {
  const { tokenId, name, owner, scopes, expiresAt, lastUsedAt, revokedAt } = token;
  const isOver = revokedAt !== null || expiresAt.getTime() <= Date.now();
  return (
    <li>
      <p className="line-name">
        <bdi>{name}</bdi>
      </p>
      <span className="line-aside">{scopes.join(', ')}</span>
      <p className="line-below">
        as <bdi>{owner}</bdi>,{' '}
        {revokedAt === null
          ? `${isOver ? 'ended' : 'good until'} ${momentText(expiresAt, timezone)}`
          : `revoked ${momentText(revokedAt, timezone)}`}
        , {lastUsedAt === null ? 'never used' : `last used ${momentText(lastUsedAt, timezone)}`}
      </p>
      {!isOver && (
        <div className="line-below">
          <AskForm
            id={`token-${tokenId}`}
            action={revokeTokenHere}
            fields={[{ kind: 'hidden', name: 'tokenId', value: tokenId }]}
            button="Revoke"
          />
        </div>
      )}
    </li>
  );
}
