import { hashPassword, verifyPassword } from 'better-auth/crypto';

export const SHORTEST = 12;
export const LONGEST = 128;

/** Words that passwords are made of when nobody thinks. From memory: the usual heads of lists of leaked passwords. */
const COMMON = [
  'password',
  'passwort',
  'qwerty',
  'qwertz',
  'letmein',
  'welcome',
  'iloveyou',
  'administrator',
  'changeme',
  'bedplate',
];

/** What is wrong with a new password, to stand behind "The password"; null when it will do. */
export function passwordProblem(password: string): string | null {
  if (password.length < SHORTEST) return `must have at least ${SHORTEST} characters`;
  if (password.length > LONGEST) return `must have at most ${LONGEST} characters`;
  const plain = password.toLowerCase();
  const rest = COMMON.reduce((text, word) => text.replaceAll(word, ''), plain).replace(/[^\p{L}]/gu, '');
  if (rest.length < 3) return 'is too easy to guess: it is common words, figures and signs alone';
  if (new Set(plain).size < 5) return 'is too easy to guess: it repeats the same few characters';
  return null;
}

/** By scrypt, as the sign-in checks it. */
export const hashed = (password: string): Promise<string> => hashPassword(password);

/** Whether this is the password that was hashed. What is longer than any password is not worth the work of a hash. */
export const isPassword = async (hash: string, password: string): Promise<boolean> =>
  password.length <= LONGEST && verifyPassword({ hash, password });
