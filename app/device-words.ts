/**
 * What a session runs on, in a word, from what the browser says of itself. "Mobi" is what browsers on phones have in
 * common, "Mozilla/" all of them; common practice, no source.
 */
export function deviceWords(userAgent: string | null): string {
  if (userAgent === null || userAgent === '') return 'Unknown device';
  if (/tablet/i.test(userAgent)) return 'Tablet';
  if (/mobi/i.test(userAgent)) return 'Phone';
  return userAgent.startsWith('Mozilla/') ? 'Computer' : 'Program';
}
