// Run by import-killed.test.ts as a process of its own, to be killed in the middle: works on one import and says so.
import { workOnImport } from '@/lib/register/import/work-on-import';

const [siteId = '', runId = '', userId = ''] = process.argv.slice(2);
await workOnImport({ siteId, runId, userId }, new AbortController().signal);
console.log('done');
process.exit(0);
