import fs from 'node:fs';
import path from 'node:path';

interface PhoneFiles {
  script: string;
  style: string;
  worker: string;
  /** What script and worker import at once. */
  parts: string[];
  zxing: string;
}

let known: PhoneFiles | null = null;

/** What scripts/phone.mjs built, by their addresses. */
export function phoneFiles(): PhoneFiles {
  known ??= JSON.parse(fs.readFileSync(path.join(process.cwd(), '.phone/files.json'), 'utf8')) as PhoneFiles;
  return known;
}
