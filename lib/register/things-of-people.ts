/** What the audit tells of people, which only an administrator reads. */
export const THINGS_OF_PEOPLE: readonly string[] = ['person', 'token', 'link'];
