import fs from 'node:fs';
import type { Problem, Reading } from '../lib/plant/reading';

/** A case of 10 000 motors is about 15 MB. */
const MAX_BYTES = 32 * 1024 * 1024;

/** The text that the command's one argument names: a file, or - for standard input. */
export async function textGiven(usage: string): Promise<Reading<string>> {
  const [name, ...more] = process.argv.slice(2);
  if (name === undefined || name === '' || more.length > 0)
    return refused({ path: '(command)', value: null, says: `takes one argument: ${usage}` });
  try {
    const bytes = await firstBytes(name === '-' ? process.stdin : fs.createReadStream(name));
    if (bytes.length > MAX_BYTES)
      return refused({ path: name, value: null, says: `is larger than ${MAX_BYTES / 1024 / 1024} MB` });
    return { ok: true, value: new TextDecoder('utf-8', { fatal: true }).decode(bytes) };
  } catch (error) {
    return refused({ path: name, value: null, says: REASONS[codeOf(error)] ?? 'cannot be read' });
  }
}

/** Prints the value as one JSON object, or one line per problem on standard error with exit code 2. */
export function answer(reading: Reading<unknown>): void {
  if (reading.ok) {
    process.stdout.write(`${JSON.stringify(reading.value, null, 2)}\n`);
    return;
  }
  const lines = reading.problems.map(({ path, says, value }) =>
    value === null ? `${path}: ${says}` : `${path}: ${says} (got ${value})`,
  );
  process.stderr.write(`${lines.map((line) => line.replace(/[\p{Cc}\u2028\u2029]/gu, ' ')).join('\n')}\n`);
  process.exitCode = 2;
}

const refused = (problem: Problem): Reading<string> => ({ ok: false, problems: [problem] });

/** Reads no more than the limit and one byte: an endless pipe ends too. */
async function firstBytes(stream: AsyncIterable<Buffer>): Promise<Buffer> {
  const parts: Buffer[] = [];
  let length = 0;
  for await (const part of stream) {
    parts.push(part);
    length += part.length;
    if (length > MAX_BYTES) break;
  }
  return Buffer.concat(parts);
}

const codeOf = (error: unknown) => (error instanceof Error && 'code' in error ? String(error.code) : '');
const REASONS: Record<string, string> = {
  ENOENT: 'no such file',
  EISDIR: 'is a folder, not a file',
  EACCES: 'may not be read',
  ERR_ENCODING_INVALID_ENCODED_DATA: 'is not UTF-8 text',
};
