import { z } from 'zod';
import type { ZodOpenApiOperationObject, ZodOpenApiResponsesObject } from 'zod-openapi';
import { scopesFor } from '@/lib/auth/scopes';
import ANSWERS from './examples/answers.json';
import { BODIES, FILE } from './examples/bodies';
import { KEY } from './examples/ids';
import { PARTS } from './examples/parts';
import type { Operation } from './operation';
import { refusals } from './refusals';
import { problemAnswer } from './schemas/problem';

/** An operation as the document tells it. */
export function describedOperation(operation: Operation): ZodOpenApiOperationObject {
  const { action, id, method, summary, says, body } = operation;
  return {
    operationId: id,
    summary,
    ...(says !== undefined && { description: says }),
    security: scopesFor(action, method.toUpperCase()).map((scope) => ({ token: [scope] })),
    requestParams: asked(operation),
    ...(body && {
      requestBody: {
        required: true,
        content: Object.fromEntries(
          body.types.map((type) => [type, { schema: body.schema, ...exampleSent(id, type) }]),
        ),
      },
    }),
    responses: { ...refused(operation), ...answered(operation) },
  };
}

function asked({ method, parts = {}, query, isGuarded, once, answers }: Operation) {
  const path = Object.fromEntries(
    Object.entries(parts).map(([name, what]) => [name, z.string().meta({ description: what, example: PARTS[name] })]),
  );
  const key = once === 'must' ? z.uuid() : z.string().min(1).max(200).optional();
  const header = {
    ...(isGuarded && {
      'If-Match': z.string().meta({ description: 'The ETag of what was read', example: '"1-4f0c2a7b9d14"' }),
    }),
    ...(method === 'get' &&
      answers[200]?.hasTag && { 'If-None-Match': z.string().optional().describe('ETags of what is there already') }),
    ...(once && {
      'Idempotency-Key': key.meta({
        description: 'Made by whoever asks; what was done is answered again under it for seven days',
        example: KEY,
      }),
    }),
  };
  return {
    ...(parts && Object.keys(path).length > 0 && { path: z.object(path) }),
    ...(query && { query }),
    ...(Object.keys(header).length > 0 && { header: z.object(header) }),
  };
}

function exampleSent(id: string, type: string) {
  if (type === 'text/csv') return { example: FILE };
  return BODIES[id] === undefined ? {} : { example: BODIES[id] };
}

/** Lists of findings and dimensions are shortened in it. */
function exampleAnswered(id: string) {
  const example = (ANSWERS as Readonly<Record<string, unknown>>)[id];
  return example === undefined ? {} : { example };
}

const PROBLEM = { 'application/problem+json': { schema: problemAnswer } };

const WRONG = { 'application/problem+json': { schema: problemAnswer, example: ANSWERS.problem } };

const refused = (operation: Operation): ZodOpenApiResponsesObject =>
  Object.fromEntries(
    Object.entries(refusals(operation)).map(([status, description]) => [
      status,
      {
        description,
        ...(status === '401' && { headers: z.object({ 'WWW-Authenticate': z.string() }) }),
        content: status === '422' ? WRONG : PROBLEM,
      },
    ]),
  );

function answered({ id, method, answers }: Operation): ZodOpenApiResponsesObject {
  const told = Object.entries(answers).map(([status, { says: description, schema, hasTag, hasLocation }]) => [
    status,
    {
      description,
      ...((hasTag || hasLocation) && {
        headers: z.object({ ...(hasTag && { ETag: z.string() }), ...(hasLocation && { Location: z.string() }) }),
      }),
      content: schema ? { 'application/json': { schema, ...exampleAnswered(id) } } : PROBLEM,
    },
  ]);
  const isSame = method === 'get' && answers[200]?.hasTag;
  return {
    ...Object.fromEntries(told),
    ...(isSame && { 304: { description: 'It is what If-None-Match names', headers: z.object({ ETag: z.string() }) } }),
  };
}
