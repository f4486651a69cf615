import { z } from 'zod';
import type { Operation } from '../api/v1/operation';
import { Facts } from '../look/facts';
import { SectionHead } from '../look/section-head';
import { exampleOf } from './examples';

/** One thing that can be asked: what goes in, what comes out, and how to try it. */
export function OperationSheet({ operation }: { operation: Operation }) {
  const { id, method, path, summary, says, answers, body } = operation;
  const example = exampleOf(operation);
  return (
    <section id={id}>
      <SectionHead title={summary} aside={<code>{`${method.toUpperCase()} ${path}`}</code>} />
      {says !== undefined && <p className="pt-3">{says}</p>}
      <Facts
        rows={[
          ...asked(operation).map(({ name, what }) => ({ label: name, value: what })),
          ...(body ? [{ label: 'Body', value: body.types.join(' or ') }] : []),
          ...Object.entries(answers).map(([status, { says: words }]) => ({ label: `Answers ${status}`, value: words })),
        ]}
      />
      <pre className="code">{example}</pre>
      {body && (
        <details className="views">
          <summary className="to">What the body may hold</summary>
          <pre className="code">
            {JSON.stringify(z.toJSONSchema(body.schema, { io: 'input', unrepresentable: 'any' }), null, 1)}
          </pre>
        </details>
      )}
    </section>
  );
}

/** What is sent beside the body: in the path, in the question, in the head. */
function asked({ parts = {}, query, isGuarded, once }: Operation): { name: string; what: string }[] {
  return [
    ...Object.entries(parts).map(([name, what]) => ({ name: `{${name}}`, what })),
    ...Object.entries(query?.shape ?? {}).map(([name, schema]) => ({
      name: `?${name}`,
      what: (schema as z.ZodType).description ?? 'may be left out',
    })),
    ...(isGuarded ? [{ name: 'If-Match', what: 'the ETag of what was read' }] : []),
    ...(once ? [{ name: 'Idempotency-Key', what: once === 'must' ? 'a UUID; it must be sent' : 'may be sent' }] : []),
  ];
}
