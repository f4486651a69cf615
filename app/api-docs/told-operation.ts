import type { openApiDocument } from '../api/v1/document';
import { kindInWords, type Schema } from './kind-in-words';

/** One thing that can be asked, as the document tells it. */
export interface ToldOperation {
  id: string;
  group: string;
  method: string;
  path: string;
  summary: string;
  says: string | null;
  /** Any one of these. */
  scopes: readonly string[];
  asked: readonly ToldParameter[];
  body: { types: readonly string[]; schema: string | null; example: unknown } | null;
  answers: readonly ToldAnswer[];
}

interface ToldParameter {
  name: string;
  where: 'path' | 'query' | 'header';
  isNeeded: boolean;
  kind: string;
  what: string;
  example: string | null;
}

export interface ToldAnswer {
  status: number;
  says: string;
  headers: readonly string[];
  /** The name of its schema; null: it is told nowhere else. */
  schema: string | null;
  /** Undefined: there is none. */
  example: unknown;
}

/** Every operation of the document, in its order. */
export function toldOperations(document: ReturnType<typeof openApiDocument>): ToldOperation[] {
  const paths = (document.paths ?? {}) as unknown as Record<string, Record<string, Written>>;
  const all = Object.entries(paths).flatMap(([path, item]) =>
    Object.entries(item).map(([method, written]) => toldOperation(method, path, written)),
  );
  const groups = (document.tags ?? []).map(({ name }) => name);
  return groups.flatMap((group) => all.filter((one) => one.group === group));
}

/** The parts of OpenAPI that this API's document has. */
interface Written {
  operationId: string;
  summary: string;
  description?: string;
  tags: [string];
  security: Record<string, string[]>[];
  parameters?: {
    name: string;
    in: ToldParameter['where'];
    required?: boolean;
    description?: string;
    schema: Schema & { example?: string };
  }[];
  requestBody?: { content: Content };
  responses: Record<string, { description: string; headers?: object; content?: Content }>;
}
type Content = Record<string, { schema: { $ref?: string }; example?: unknown }>;

function toldOperation(method: string, path: string, written: Written): ToldOperation {
  const { operationId, summary, description, tags, security, parameters = [], requestBody, responses } = written;
  return {
    id: operationId,
    group: tags[0],
    method: method.toUpperCase(),
    path,
    summary,
    says: description ?? null,
    scopes: security.flatMap(({ token = [] }) => token),
    asked: parameters.map(({ name, in: where, required, description: what, schema }) => ({
      ...{ name, where, isNeeded: required === true, what: what ?? '', example: schema.example ?? null },
      kind: kindInWords(schema),
    })),
    body:
      requestBody === undefined ? null : { types: Object.keys(requestBody.content), ...shownOf(requestBody.content) },
    answers: Object.entries(responses).map(([status, { description: says, headers = {}, content }]) => ({
      ...{ status: Number(status), says, headers: Object.keys(headers) },
      ...shownOf(content ?? {}),
    })),
  };
}

/** The name of the schema and the example, of whichever type has one. */
function shownOf(content: Content): { schema: string | null; example: unknown } {
  const kinds = Object.values(content);
  return {
    schema: kinds[0]?.schema.$ref?.replace('#/components/schemas/', '') ?? null,
    example: kinds.find(({ example }) => example !== undefined)?.example,
  };
}
