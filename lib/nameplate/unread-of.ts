import type { Token } from './token';

/** The stretches of a line that were not read, as they stood. */
export function unreadOf(tokens: readonly Token[], original: string): string[] {
  const stretches: { at: number; end: number }[] = [];
  let isOpen = false;
  for (const token of tokens) {
    const last = stretches.at(-1);
    if (token.kind === 'fact') isOpen = false;
    else if (isOpen && last) last.end = token.end;
    else {
      stretches.push({ at: token.at, end: token.end });
      isOpen = true;
    }
  }
  return stretches.map(({ at, end }) => original.slice(at, end).trim()).filter((said) => /[\p{L}\p{N}]/u.test(said));
}
