import { createHash, randomBytes } from 'node:crypto';

/** 32 bytes: twice the 128 bits that are asked for, so that a hash without salt will do. */
const BYTES = 32;
/** How a secret is written: 43 characters of base64url (RFC 4648, 5). */
export const SECRET = /^[\w-]{43}$/;

/** A secret to be shown once, and the sum by which it is known again. */
export function newSecret(prefix = ''): { secret: string; sha256: string } {
  const secret = `${prefix}${randomBytes(BYTES).toString('base64url')}`;
  return { secret, sha256: sha256Of(secret) };
}

export const sha256Of = (secret: string): string => createHash('sha256').update(secret).digest('hex');
