import { THINGS_OF_PEOPLE } from '@/lib/register/things-of-people';

/** Every action that the audit knows, in a word or two. A test asks for each that the program writes. */
const ACTION_WORDS = {
  'area.register': 'Entered',
  'area.change': 'Changed',
  'store.register': 'Entered',
  'store.change': 'Changed',
  'shelf.register': 'Entered',
  'shelf.change': 'Changed',
  'set.register': 'Entered in the register',
  'set.change': 'Changed',
  'set.shim': 'Shims under the feet noted',
  'motor.register': 'Entered in the register',
  'motor.change': 'Changed',
  'motor.move': 'Moved',
  'swap.record': 'Swap recorded',
  'swap.overtaken': 'Swap told at the pump, but somebody was first',
  'swap.readings': 'Readings told after a swap',
  'swap.take-over': 'Earlier swap taken over',
  'fault.report': 'Fault reported',
  'fault.close': 'Fault closed',
  'repair.open': 'Sent to repair, or scrapped',
  'repair.figures': 'Figures of repair or replace told',
  'repair.decide': 'Repair or scrap decided',
  'repair.end': 'Repair ended',
  'picture.keep': 'Photograph kept',
  'picture.retire': 'Photograph retired',
  'import.start': 'File sent',
  'import.read': 'Read again',
  'import.check': 'Columns confirmed, every row looked at',
  'import.apply': 'Written into the register',
  'import.cancel': 'Stopped',
  'import.undo': 'Taken back',
  'register.export': 'Exported',
  'doubt.accept': 'Doubt accepted',
  'doubt.withdraw': 'Acceptance withdrawn',
  'review.accept': 'Finding of the review accepted',
  'review.withdraw': 'Acceptance of a finding withdrawn',
  'set.measure': 'Measured',
  'site.register': 'Site made',
  'site.loaded': 'Demonstration loaded',
  'settings.edit': 'Site settings changed',
  'audit.export': 'Audit exported',
  'person.invite': 'Invited',
  'person.join': 'Came in by the invitation',
  'person.register': 'Made',
  'person.role': 'Role changed',
  'person.retire': 'Retired',
  'person.bring-back': 'Brought back',
  'person.anonymise': 'No longer named',
  'person.password': 'Password changed',
  'person.reset-link': 'Link for a new password made',
  'person.reset': 'New password by link',
  'person.link-revoke': 'Link revoked',
  'person.session-end': 'Session ended',
  'person.sign-in': 'Signed in',
  'person.sign-in-refused': 'Sign-in refused',
  'person.locked-out': 'Locked out after refused sign-ins',
  'person.sign-out': 'Signed out',
  'person.units': 'Units chosen',
  'token.make': 'Token made',
  'token.use': 'Token used first that day',
  'token.denied': 'Token denied',
  'token.revoke': 'Token revoked',
} as const;

export const isKnownAction = (action: string): boolean => Object.hasOwn(ACTION_WORDS, action);

/** What was done. An action of an older program is shown as it stands. */
export const actionWords = (action: string): string =>
  isKnownAction(action) ? ACTION_WORDS[action as keyof typeof ACTION_WORDS] : action;

/** The actions that are told in the same words as this one; none of an unknown one. */
export const actionsLike = (action: string): string[] =>
  Object.keys(ACTION_WORDS).filter((one) => isKnownAction(action) && actionWords(one) === actionWords(action));

/** What can have been done, once for each word: the first action that is told so, and the word. */
export function doneOptions(isOffice: boolean): { value: string; words: string }[] {
  const shown = Object.keys(ACTION_WORDS).filter(
    (one) => isOffice || !THINGS_OF_PEOPLE.includes(one.split('.')[0] ?? one),
  );
  return shown
    .filter((one) => shown.find((other) => actionWords(other) === actionWords(one)) === one)
    .map((value) => ({ value, words: actionWords(value) }))
    .sort((a, b) => a.words.localeCompare(b.words, 'en'));
}

/** What an entry is about. */
export const THING_WORDS: Readonly<Record<string, string>> = {
  set: 'Set',
  motor: 'Motor',
  area: 'Area',
  store: 'Store',
  shelf: 'Shelf',
  import: 'Import',
  register: 'Register',
  site: 'Site',
  person: 'Person',
  token: 'Token',
  link: 'Link',
};
