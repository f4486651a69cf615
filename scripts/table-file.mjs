/** What the makers of the electrical tables share: reading a transcribed standard, and writing one table. */
import { readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';

const [reference] = process.argv.slice(2);
if (!reference) {
  console.error('REFERENCE_DIR: tell the folder that holds electrical/');
  process.exit(2);
}
const maker = path.basename(process.argv[1]);
const out = path.join(import.meta.dirname, '..', 'lib', 'standards', 'tables');
const TEXTS = { memory: 0, published: 1, 'published-2': 2 };

export const readReference = (name) =>
  JSON.parse(readFileSync(path.join(reference, 'electrical', `${name}.json`), 'utf8'));

/** A figure as a table holds it: the print, the number of texts it was read in, their codes. */
export const cell = (value) =>
  value === undefined || value === null ? null : [value.v, TEXTS[value.status], (value.src ?? []).join(' ')];

const codesIn = (rows) =>
  new Set(
    JSON.stringify(rows)
      .match(/(?<=",?|,)"[A-Z0-9][A-Z0-9 -]*"(?=\])/g)
      ?.flatMap((s) => s.slice(1, -1).split(' ')) ?? [],
  );

export function write({ file, name, type, source, unit, columns, rows, notes = [] }, sources) {
  const texts = Object.fromEntries([...codesIn(rows)].sort().map((code) => [code, sources[code]]));
  const lines = rows.map((row) => `    ${JSON.stringify(row)},`).join('\n');
  writeFileSync(
    path.join(out, `${file}.ts`),
    `// Written by scripts/${maker}: figures as printed, never converted or rounded. Do not edit by hand.
import type { Cell, Table } from '../table';

${type}

export const ${name}: Table<${type.match(/interface (\w+)/)[1]}> = {
  source: ${JSON.stringify({ ...source, texts }, null, 2).replaceAll('\n', '\n  ')},
  unit: ${JSON.stringify(unit)},
  columns: ${JSON.stringify(columns, null, 2).replaceAll('\n', '\n  ')},
  rows: [
${lines}
  ],
  notes: ${JSON.stringify(notes, null, 2).replaceAll('\n', '\n  ')},
};
`,
  );
}
