/** A file that is not read, and why, in the planner's words: a sentence that says what would be right. */
export class SheetRefused extends Error {
  override name = 'SheetRefused';
  constructor(
    readonly says: string,
    options?: ErrorOptions,
  ) {
    super(says, options);
  }
}
