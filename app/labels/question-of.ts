import type { Query } from '../lists/asked-for';

/** The whole question of an address, repeated names too. */
export function questionOf(query: Query): string {
  const params = new URLSearchParams();
  for (const [name, told] of Object.entries(query))
    for (const value of Array.isArray(told) ? told : [told]) if (value !== undefined) params.append(name, value);
  const text = params.toString();
  return text === '' ? '' : `?${text}`;
}
