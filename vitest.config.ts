import path from 'node:path';
import { defineConfig } from 'vitest/config';

const alias = {
  '@': import.meta.dirname,
  'server-only': path.join(import.meta.dirname, 'node_modules/server-only/empty.js'), // it throws outside Next
};
// Rooms below the server line: their tests run on a real database.
const database = ['test/{db,audit,auth,register,seed,api}/**/*.test.ts'];

/** A busy machine fails no test, even one ten times slower than an idle desk's. */
const PATIENT = { testTimeout: 600_000, hookTimeout: 600_000, expect: { poll: { timeout: 90_000 } } };

export default defineConfig({
  test: {
    maxWorkers: '100%',
    projects: [
      {
        resolve: { alias },
        test: {
          name: 'unit',
          include: ['test/**/*.test.ts'],
          exclude: database,
          environment: 'node',
          isolate: false, // they keep nothing: one start for many files halves the time
          ...PATIENT,
        },
      },
      {
        resolve: { alias },
        test: {
          name: 'database',
          include: database,
          environment: 'node',
          globalSetup: 'test/db/server.ts',
          setupFiles: 'test/db/database.ts',
          ...PATIENT,
        },
      },
    ],
  },
});
