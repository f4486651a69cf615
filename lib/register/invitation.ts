import { z } from 'zod';
import { ROLES } from '@/lib/auth/may';

/** Longest address there is (RFC 5321, 4.5.3.1: a path of 256 octets with its brackets). */
const LONGEST_EMAIL = 254;
const EMAIL = z.email();

/** Who is to come in, and as what. */
export const invitation = z.strictObject({
  name: z
    .string()
    .transform((text) => text.replace(/[\p{Cc}\p{Cs}\p{Zl}\p{Zp}]+/gu, ' ').trim())
    .refine((text) => text !== '' && text.length <= 100, { error: 'must have 1 to 100 characters' }),
  email: z
    .string()
    .transform((text) => text.trim().toLowerCase())
    .refine(isEmail, { error: 'must be an e-mail address' }),
  role: z.enum(ROLES),
});

export type Invitation = z.input<typeof invitation>;

/** "invalid" is nobody's domain (RFC 2606, 2): it is kept for people who are no longer named. */
export const NOWHERE = '@example.invalid';

function isEmail(text: string): boolean {
  return text.length <= LONGEST_EMAIL && !text.endsWith('.invalid') && EMAIL.safeParse(text).success;
}
