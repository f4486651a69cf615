import type { Metadata } from 'next';
import Link from 'next/link';
import { may } from '@/lib/auth/may';
import { answered } from '../answered';
import { openApiDocument } from '../api/v1/document';
import { OPERATIONS } from '../api/v1/operations';
import { SectionHead } from '../look/section-head';
import { Sheet } from '../look/sheet';
import { personOf, whoMay } from '../who-is-here';
import { OperationSheet } from './operation-sheet';

export const metadata: Metadata = { title: 'API' };

/** The API's document, as a person reads it. */
export default answered(async function ApiDocsPage() {
  const actor = await whoMay('register.read', '/api-docs');
  const { components } = openApiDocument();
  return (
    <Sheet person={personOf(actor)} current="/desk" back={{ href: '/desk', words: 'Desk' }}>
      <h1 className="page">API</h1>
      <p className="mt-2">
        Programs ask under <code>/api/v1</code> with a token, as its person and never beyond its scopes. What is not
        known is left out; null says it is not known. A refusal tells everything that was wrong, each with where it
        stood.
      </p>
      <ul className="told pt-3">
        <li>
          A part of a list names the next in “next”: send it as <code>after</code>.
        </li>
        <li>
          A record comes with its ETag; a change sends it as <code>If-Match</code> and is refused with 412 when somebody
          changed it since.
        </li>
        <li>
          What makes something takes an <code>Idempotency-Key</code> of your own making: sent again under it, it is
          carried out once and answered the same, for seven days.
        </li>
      </ul>
      <p className="pt-3">
        <a className="to" href="/api/v1/openapi.json">
          The document itself (OpenAPI 3.1)
        </a>{' '}
        {may(actor, 'token.manage') && (
          <Link className="to" href="/tokens">
            Tokens
          </Link>
        )}
      </p>
      {OPERATIONS.map((operation) => (
        <OperationSheet key={operation.id} operation={operation} />
      ))}
      <SectionHead title="What is answered" aside="as JSON Schema" />
      {Object.entries(components?.schemas ?? {}).map(([name, schema]) => (
        <details key={name} className="views" id={`schema-${name}`}>
          <summary className="to">{name}</summary>
          <pre className="code">{JSON.stringify(schema, null, 1)}</pre>
        </details>
      ))}
    </Sheet>
  );
});
