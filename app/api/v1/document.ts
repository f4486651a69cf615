import { z } from 'zod';
import { createDocument, type ZodOpenApiOperationObject, type ZodOpenApiPathsObject } from 'zod-openapi';
import type { Operation } from './operation';
import { OPERATIONS } from './operations';
import { problemAnswer } from './schemas/problem';

/** What any operation may answer instead. */
const ALWAYS: Readonly<Record<number, string>> = {
  401: 'Nobody is known by what was sent',
  403: 'It is not theirs to do',
  503: 'The database does not answer',
};

/** The document of the API (OpenAPI 3.1), made of the schemas that the routes read and answer by. */
export const openApiDocument = (): ReturnType<typeof createDocument> =>
  createDocument({
    openapi: '3.1.0',
    info: {
      title: 'Bedplate',
      version: '1',
      description:
        'A plant’s pump-motor sets and motors, and what can replace what. Bedplate proposes; a competent person decides. Unknown is never a pass.',
    },
    servers: [{ url: '/api/v1' }],
    security: [{ token: [] }],
    components: {
      securitySchemes: { token: { type: 'http', scheme: 'bearer', description: 'A token made under Desk, Tokens.' } },
    },
    paths: paths(),
  });

function paths(): ZodOpenApiPathsObject {
  const all: Record<string, Record<string, ZodOpenApiOperationObject>> = {};
  for (const operation of OPERATIONS) {
    all[operation.path] ??= {};
    (all[operation.path] as Record<string, ZodOpenApiOperationObject>)[operation.method] = described(operation);
  }
  return all;
}

function described(operation: Operation): ZodOpenApiOperationObject {
  const { id, summary, says, parts = {}, query, body, isGuarded, once, answers } = operation;
  const path = Object.fromEntries(Object.entries(parts).map(([name, what]) => [name, z.string().describe(what)]));
  const key = z
    .string()
    .max(200)
    .describe('Made once by whoever asks; kept seven days. The same with another body is refused.');
  const header = z.object({
    ...(isGuarded && { 'If-Match': z.string().describe('The ETag of what was read') }),
    ...(once !== undefined && { 'Idempotency-Key': once === 'must' ? key : key.optional() }),
  });
  return {
    operationId: id,
    summary,
    ...(says !== undefined && { description: says }),
    requestParams: {
      ...(Object.keys(path).length > 0 && { path: z.object(path) }),
      ...(query && { query }),
      ...(Object.keys(header.shape).length > 0 && { header }),
    },
    ...(body && {
      requestBody: {
        required: true,
        content: Object.fromEntries(body.types.map((type) => [type, { schema: body.schema }])),
      },
    }),
    responses: {
      ...Object.fromEntries(
        Object.entries(answers).map(([status, { says: description, schema, hasTag, hasLocation }]) => [
          status,
          {
            description,
            ...((hasTag || hasLocation) && {
              headers: z.object({
                ...(hasTag && { ETag: z.string() }),
                ...(hasLocation && { Location: z.string() }),
              }),
            }),
            ...(schema
              ? { content: { 'application/json': { schema } } }
              : { content: { 'application/problem+json': { schema: problemAnswer } } }),
          },
        ]),
      ),
      ...Object.fromEntries(
        Object.entries({ ...ALWAYS, ...refusals(operation) })
          .filter(([status]) => !(status in answers))
          .map(([status, description]) => [
            status,
            { description, content: { 'application/problem+json': { schema: problemAnswer } } },
          ]),
      ),
    },
  };
}

function refusals({ parts, query, body, isGuarded, once }: Operation): Record<number, string> {
  return {
    ...(parts && { 404: 'There is no such thing at this site' }),
    ...(body && { 400: 'The body is not what its type says', 413: 'It is too large', 415: 'It is of another type' }),
    ...((body || query) && { 422: 'It is not understood, or cannot stand so; every problem is told' }),
    ...(once && { 422: 'It is not understood, or the key was used for something else' }),
    ...(isGuarded && { 428: 'Say by If-Match what you read' }),
  };
}
