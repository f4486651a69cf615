const NAME = 'recent';
const MOST = 8;

/** The sets last opened on this phone, newest first. */
export function recentTags(): string[] {
  try {
    const told: unknown = JSON.parse(localStorage.getItem(NAME) ?? '[]');
    return Array.isArray(told) ? told.filter((one) => typeof one === 'string').slice(0, MOST) : [];
  } catch {
    return [];
  }
}

export function noteOpened(tag: string) {
  const tags = [tag, ...recentTags().filter((one) => one !== tag)].slice(0, MOST);
  try {
    localStorage.setItem(NAME, JSON.stringify(tags));
  } catch {
    // A full phone does without.
  }
}
