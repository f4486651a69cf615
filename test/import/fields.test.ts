import { describe, expect, test } from 'vitest';
import { fieldsOf } from '@/lib/import/fields';

describe.each(['sets', 'motors'] as const)('fields of %s', (kind) => {
  test('no id and no heading belongs to two of them', () => {
    const ids = fieldsOf(kind).map(({ id }) => id);
    expect(ids.filter((id, i) => ids.indexOf(id) !== i)).toEqual([]);
    const owners = new Map<string, string[]>();
    for (const { id, names } of fieldsOf(kind))
      for (const name of names) owners.set(name, [...(owners.get(name) ?? []), id]);
    expect([...owners].filter(([name, of]) => of.length > 1 || name === '')).toEqual([]);
  });

  test('no two keep their value in one place', () => {
    const paths = fieldsOf(kind).flatMap(({ path }) => (path === null ? [] : [path.join('.')]));
    expect(paths.filter((path, i) => paths.indexOf(path) !== i)).toEqual([]);
  });
});
