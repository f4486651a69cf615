import type { Metadata } from 'next';
import Link from 'next/link';
import { may } from '@/lib/auth/may';
import { answered } from '../answered';
import { openApiDocument } from '../api/v1/document';
import ANSWERS from '../api/v1/examples/answers.json';
import { SectionHead } from '../look/section-head';
import { Sheet } from '../look/sheet';
import { personOf, whoMay } from '../who-is-here';
import { jsonText } from './json-text';
import { OperationSheet } from './operation-sheet';
import { toldOperations } from './told-operation';

export const metadata: Metadata = { title: 'API' };

/** The API's document, as a person reads it. */
export default answered(async function ApiDocsPage() {
  const actor = await whoMay('register.read', '/api-docs');
  const { operations, groups, schemas } = told();
  return (
    <Sheet wide person={personOf(actor)} current="/desk" back={{ href: '/desk', words: 'Desk' }}>
      <h1 className="page">API</h1>
      <div className="op">
        <div className="op-told">
          <p>
            Programs ask under <code>/api/v1</code> with a token, as its person and never beyond its scopes.
            {may(actor, 'token.manage') ? (
              <>
                {' '}
                Make one under{' '}
                <Link className="to" href="/tokens">
                  Tokens
                </Link>
                .
              </>
            ) : (
              ' An administrator makes one.'
            )}
          </p>
          <ul className="told pt-3">
            <li>What is not known is left out; sent as null, it is not known any more.</li>
            <li>
              A part of a list names the next in “next”: send it as <code>after</code> until there is none.
            </li>
            <li>
              A record comes with its <code>ETag</code>; a change sends it as <code>If-Match</code>, and is refused with
              412 and the record as it stands when somebody was first.
            </li>
            <li>
              What makes something takes an <code>Idempotency-Key</code> of your own making: sent again under it, it is
              done once and answered the same, for seven days.
            </li>
            <li>A refusal tells everything that was wrong, each with where it stood (RFC 9457).</li>
          </ul>
          <p className="pt-3">
            <a className="to" href="/api/v1/openapi.json">
              The document for programs (OpenAPI 3.1)
            </a>
          </p>
        </div>
        <div className="op-shown">
          <pre className="code">{BEGIN}</pre>
          <p className="op-answer">
            <b>422</b> A refusal
          </p>
          <pre className="code">{jsonText(ANSWERS.problem)}</pre>
        </div>
      </div>
      <nav aria-label="On this page" className="outcomes">
        {groups.map((group) => (
          <a key={group} href={`#${anchorOf(group)}`}>
            {group}
          </a>
        ))}
        <a href="#schemas">What is sent and answered</a>
      </nav>
      {groups.map((group) => (
        <section key={group} id={anchorOf(group)}>
          <SectionHead title={group} />
          {operations
            .filter((one) => one.group === group)
            .map((operation) => (
              <OperationSheet key={operation.id} operation={operation} />
            ))}
        </section>
      ))}
      <section id="schemas">
        <SectionHead title="What is sent and answered" aside="as JSON Schema" />
        {schemas.map(([name, schema]) => (
          <details key={name} className="views">
            <summary className="to">{name}</summary>
            <pre className="code long" id={`schema-${name}`} {...REACHABLE}>
              {schema}
            </pre>
          </details>
        ))}
      </section>
    </Sheet>
  );
});

/** What scrolls must be reached by the keyboard, though it is nothing to press. */
const REACHABLE = { tabIndex: 0 };

const BEGIN = `PLANT=http://localhost:3000
TOKEN=bp_…
curl "$PLANT/api/v1/sets?limit=10" \\
  -H "Authorization: Bearer $TOKEN"`;

const anchorOf = (group: string) => group.toLowerCase().replaceAll(' ', '-');

let kept: ReturnType<typeof read> | null = null;
/** The document is the same for everybody: it is read once. */
const told = () => {
  kept ??= read();
  return kept;
};

function read() {
  const document = openApiDocument();
  const operations = toldOperations(document);
  return {
    operations,
    groups: [...new Set(operations.map(({ group }) => group))],
    schemas: Object.entries(document.components?.schemas ?? {}).map(
      ([name, schema]) => [name, jsonText(schema)] as const,
    ),
  };
}
