import { z } from 'zod';
import type { Operation } from '../operation';

export const documentOp = {
  action: 'register.read',
  ...{ method: 'get', path: '/openapi.json', id: 'readDocument', summary: 'This document' },
  answers: { 200: { says: 'What can be asked (OpenAPI 3.1)', schema: z.looseObject({ openapi: z.literal('3.1.0') }) } },
} as const satisfies Operation;
