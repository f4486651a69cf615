import { createDocument, type ZodOpenApiOperationObject, type ZodOpenApiPathsObject } from 'zod-openapi';
import { describedOperation } from './described-operation';
import { OPERATIONS_OF } from './operations';

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
    components: {
      securitySchemes: {
        token: {
          type: 'http',
          scheme: 'bearer',
          description:
            'A token made under Desk, Tokens. Beside each operation stands the scope it must have; where there are several, any one of them. A person who is signed in asks by their session as well.',
        },
      },
    },
    tags: Object.keys(OPERATIONS_OF).map((name) => ({ name })),
    paths: paths(),
  });

function paths(): ZodOpenApiPathsObject {
  const all: Record<string, Record<string, ZodOpenApiOperationObject>> = {};
  for (const [name, operations] of Object.entries(OPERATIONS_OF))
    for (const operation of operations)
      all[operation.path] = {
        ...all[operation.path],
        [operation.method]: { ...describedOperation(operation), tags: [name] },
      };
  return all;
}
