/** The value at a path of groups and lists; undefined where nothing is told. */
export function valueAt(whole: unknown, path: readonly string[]): unknown {
  let at = whole;
  for (const key of path) {
    if (typeof at !== 'object' || at === null || !Object.hasOwn(at, key)) return undefined;
    at = (at as Record<string, unknown>)[key];
  }
  return at;
}

/** Puts a value at a path, with the groups and lists on the way; the paths are those of the fields, no one else's. */
export function putAt(whole: Record<string, unknown>, path: readonly string[], value: unknown): void {
  let at = whole;
  for (const [i, key] of path.slice(0, -1).entries()) {
    const isList = /^\d+$/.test(path[i + 1] as string);
    if (at[key] === undefined) at[key] = isList ? [] : {};
    at = at[key] as Record<string, unknown>;
    // A row of a list that tells nothing still has its place.
    if (Array.isArray(at)) while (at.length < Number(path[i + 1])) at.push({});
  }
  at[path.at(-1) as string] = value;
}
