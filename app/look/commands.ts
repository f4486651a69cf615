/** What the command list leads to. Pages refuse by themselves what a role may not do. */
export const COMMANDS: readonly { href: string; words: string; also: string }[] = [
  { href: '/', words: 'Register', also: 'home failed faults start' },
  { href: '/find', words: 'Find a set', also: 'search tag' },
  { href: '/sets', words: 'Sets', also: 'list pumps tags' },
  { href: '/sets/new', words: 'Enter a set', also: 'new add create' },
  { href: '/motors', words: 'Motors', also: 'list plates' },
  { href: '/motors/new', words: 'Enter a motor', also: 'new add create plate paste' },
  { href: '/stores', words: 'Stores', also: 'shelf spares' },
  { href: '/stores/places', words: 'Stores and shelves', also: 'edit places' },
  { href: '/doubts', words: 'Doubts', also: 'wrong mistakes plates check' },
  { href: '/areas', words: 'Areas', also: 'surroundings' },
  { href: '/frames', words: 'Frames', also: 'dimensions standards' },
  { href: '/desk', words: 'Desk', also: 'tasks administration' },
  { href: '/site', words: 'Site settings', also: 'hours prices limits' },
  { href: '/person', words: 'Signed in', also: 'me account sign out units password' },
];

/** Those whose words hold every word typed, in their order. */
export function commandsLike(typed: string): typeof COMMANDS {
  const words = typed
    .toLowerCase()
    .split(/\s+/)
    .filter((word) => word !== '');
  return COMMANDS.filter((command) =>
    words.every((word) => `${command.words} ${command.also}`.toLowerCase().includes(word)),
  );
}
