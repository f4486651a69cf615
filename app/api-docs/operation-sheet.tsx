import { curlOf } from './curl-of';
import { jsonText } from './json-text';
import type { ToldAnswer, ToldOperation } from './told-operation';

/** One thing that can be asked: what goes in, what comes out, and how to try it. */
export function OperationSheet({ operation }: { operation: ToldOperation }) {
  const { id, method, path, summary, says, scopes, asked, body, answers } = operation;
  const given = answers.filter(({ status }) => status < 300);
  const refused = answers.filter(({ status }) => status >= 300);
  return (
    <section id={id} className="op">
      <div className="op-head">
        <h3>{summary}</h3>
        <code>{`${method} ${path}`}</code>
      </div>
      <div className="op-told">
        {says !== null && <p>{says}</p>}
        <dl>
          {asked.map(({ name, where, isNeeded, kind, what }) => (
            <Told key={name} name={name} aside={`${where}, ${isNeeded ? 'needed' : 'may be left out'}`}>
              {what}
              <small>{kind}</small>
            </Told>
          ))}
          {body !== null && (
            <Told name="Body" aside={body.types.join(' or ')}>
              {body.schema === null ? 'As the example' : <SchemaLink name={body.schema} />}
            </Told>
          )}
          <Told name="Scope" aside="of the token">
            {scopes.join(' or ')}
          </Told>
        </dl>
        <details className="views">
          <summary className="to">What it may answer instead</summary>
          <dl>
            {refused.map(({ status, says: words }) => (
              <div key={status}>
                <dt>{status}</dt>
                <dd>{words}</dd>
              </div>
            ))}
          </dl>
        </details>
      </div>
      <div className="op-shown">
        <pre className="code">{curlOf(operation)}</pre>
        {given.map((answer) => (
          <Answer key={answer.status} answer={answer} />
        ))}
      </div>
    </section>
  );
}

function Answer({ answer: { status, says, headers, schema, example } }: { answer: ToldAnswer }) {
  return (
    <>
      <p className="op-answer">
        <b>{status}</b> {says}
        {headers.length > 0 && `, with ${headers.join(' and ')}`}
        {schema !== null && (
          <>
            {': '}
            <SchemaLink name={schema} />
          </>
        )}
      </p>
      {example !== undefined && <pre className="code">{jsonText(example)}</pre>}
    </>
  );
}

function Told({ name, aside, children }: { name: string; aside: string; children: React.ReactNode }) {
  return (
    <div>
      <dt>
        <code>{name}</code>
        <small>{aside}</small>
      </dt>
      <dd>{children}</dd>
    </div>
  );
}

const SchemaLink = ({ name }: { name: string }) => (
  <a className="to" href={`#schema-${name}`}>
    {name}
  </a>
);
