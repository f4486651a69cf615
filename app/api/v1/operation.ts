import type { z } from 'zod';
import type { Action } from '@/lib/auth/may';

/** One thing that can be asked of the API: what its route reads and answers, and what the document says. */
export interface Operation {
  /** What who asks must be allowed to do. */
  action: Action;
  method: 'get' | 'post' | 'patch';
  /** "/sets/{tag}", under /api/v1. */
  path: string;
  id: string;
  summary: string;
  says?: string;
  /** Parts of the path, each with what it is. */
  parts?: Readonly<Record<string, string>>;
  query?: z.ZodObject;
  body?: { schema: z.ZodType; types: readonly string[] };
  /** ETag and If-Match (RFC 9110, 13.1.1): what is changed is what was read. */
  isGuarded?: true;
  /** Idempotency-Key: it is carried out once. */
  once?: 'may' | 'must';
  /** Beside these every operation has the refusals that `refusals.ts` tells. */
  answers: Readonly<Record<number, { says: string; schema?: z.ZodType; hasTag?: true; hasLocation?: true }>>;
}

export const JSON_TYPE = ['application/json'] as const;
export const PATCH_TYPES = ['application/merge-patch+json', 'application/json'] as const;
