import Ajv2020 from 'ajv/dist/2020';
import addFormats from 'ajv-formats';
import { expect } from 'vitest';
import { openApiDocument } from '@/app/api/v1/document';

type Handler = (request: Request, context: { params: Promise<Record<string, string>> }) => Promise<Response>;
type Route = Partial<Record<string, Handler>>;
const routes = import.meta.glob<Route>('../../app/api/v1/**/route.ts', { eager: true });

/** Every route under /api/v1 by its path as the document writes it, with the methods it answers. */
export const routesByPath = new Map(
  Object.entries(routes).map(([file, route]) => {
    const path = file
      .replace(/^.*\/api\/v1/, '')
      .replace(/\/route\.ts$/, '')
      .replaceAll(/\[(\w+)\]/g, '{$1}');
    return [path, route] as const;
  }),
);

export const openApi = openApiDocument();
// Formats are a word of the document; `strict` would refuse OpenAPI's own keys.
const ajv = new Ajv2020({ strict: false, allErrors: true });
addFormats(ajv);
ajv.addSchema({ ...openApi, $id: 'api' });

export interface Asked {
  cookie?: string;
  token?: string;
  headers?: Record<string, string>;
  /** A string or bytes are sent as they are. */
  body?: unknown;
  query?: Record<string, string> | [string, string][];
}

/** Asks a route and holds its answer against the document: status, type and body. */
export async function ask(method: string, path: string, asked: Asked = {}) {
  const { template, params } = templateOf(path);
  const route = routesByPath.get(template)?.[method.toUpperCase()];
  if (route === undefined) throw new Error(`no route for ${method} ${template}`);
  const { cookie, token, headers = {}, body, query = {} } = asked;
  const isRaw = typeof body === 'string' || body instanceof Uint8Array;
  const answer = await route(
    new Request(`http://localhost:3000/api/v1${path}?${new URLSearchParams(query)}`, {
      method: method.toUpperCase(),
      headers: {
        ...(body !== undefined && { 'content-type': 'application/json' }),
        ...(cookie !== undefined && { cookie }),
        ...(token !== undefined && { authorization: `Bearer ${token}` }),
        ...headers,
      },
      ...(body !== undefined && { body: isRaw ? (body as BodyInit) : JSON.stringify(body) }),
    }),
    { params: Promise.resolve(params) },
  );
  const text = await answer.text();
  const json = text === '' ? null : JSON.parse(text);
  if (answer.status === 304) expect(responsesOf(template, method)).toHaveProperty('304');
  else holds(template, method, answer, json);
  return { status: answer.status, headers: answer.headers, body: json };
}

const responsesOf = (path: string, method: string) =>
  (openApi.paths?.[path] as Record<string, { responses?: object }> | undefined)?.[method.toLowerCase()]?.responses ??
  {};

/** S14: the document knows this answer, and the body is as it says. */
function holds(path: string, method: string, answer: Response, json: unknown) {
  const type = answer.headers.get('content-type')?.split(';')[0] ?? '';
  const validate = schemaAt('paths', path, method.toLowerCase(), 'responses', String(answer.status), 'content', type);
  expect(validate, `${method} ${path} ${answer.status} ${type} stands in the document`).toBeDefined();
  validate?.(json);
  expect(validate?.errors ?? [], JSON.stringify(json)?.slice(0, 500)).toEqual([]);
}

/** Whether the document lets this body be sent. */
export function mayBeSent(method: string, path: string, type: string, body: unknown): boolean {
  const validate = schemaAt('paths', path, method.toLowerCase(), 'requestBody', 'content', type);
  if (validate === undefined) throw new Error(`no body of ${method} ${path} stands in the document`);
  return validate(body) === true;
}

function schemaAt(...keys: string[]) {
  const pointer = [...keys, 'schema'].map((key) => key.replaceAll('~', '~0').replaceAll('/', '~1'));
  return ajv.getSchema(`api#/${pointer.map(encodeURIComponent).join('/')}`);
}

function templateOf(path: string): { template: string; params: Record<string, string> } {
  const parts = path.split('/');
  for (const template of [...routesByPath.keys()].sort((a, b) => a.split('{').length - b.split('{').length)) {
    const keys = template.split('/');
    if (keys.length !== parts.length) continue;
    const params: Record<string, string> = {};
    const fits = keys.every((key, i) => {
      const name = /^\{(\w+)\}$/.exec(key)?.[1];
      if (name !== undefined) params[name] = parts[i] ?? '';
      return name !== undefined || key === parts[i];
    });
    if (fits) return { template, params };
  }
  throw new Error(`no route for ${path}`);
}
