import { jsonText } from './json-text';
import type { ToldOperation } from './told-operation';

/** How an operation is asked from a command line: $PLANT is where Bedplate is, $TOKEN the token. */
export function curlOf({ method, path, asked, body }: ToldOperation): string {
  const filled = path.replaceAll(/\{(\w+)\}/g, (part, name: string) => exampleOf(asked, name) ?? part);
  const question = asked
    .filter(({ where, example }) => where === 'query' && example !== null)
    .map(({ name, example }) => `${name}=${encodeURIComponent(String(example))}`)
    .join('&');
  const heads = asked
    .filter(({ where, example }) => where === 'header' && example !== null)
    .map(({ name, example }) => (name === KEY ? `-H "${name}: $(uuidgen)"` : `-H ${quoted(`${name}: ${example}`)}`));
  return [
    `curl ${method === 'GET' ? '' : `-X ${method} `}"$PLANT/api/v1${filled}${question === '' ? '' : `?${question}`}"`,
    '-H "Authorization: Bearer $TOKEN"',
    ...heads,
    ...sent(body),
  ].join(' \\\n  ');
}

const exampleOf = (asked: ToldOperation['asked'], name: string) => asked.find((one) => one.name === name)?.example;

function sent(body: ToldOperation['body']): string[] {
  if (body === null) return [];
  const isFile = typeof body.example === 'string';
  return [
    `-H "Content-Type: ${body.types[0]}"`,
    isFile ? '--data-binary @plates.csv' : `-d ${quoted(jsonText(body.example))}`,
  ];
}

/** Made anew for every request. */
const KEY = 'Idempotency-Key';

/** As one word of a shell. */
const quoted = (text: string) => `'${text.replaceAll("'", "'\\''")}'`;
