import path from 'node:path';
import { defineConfig } from 'vitest/config';

const alias = {
  '@': import.meta.dirname,
  'server-only': path.join(import.meta.dirname, 'node_modules/server-only/empty.js'), // it throws outside Next
};
// Rooms below the server line: their tests run on a real database.
const database = ['test/{db,audit,auth,register,seed,api}/**/*.test.ts'];

/** A busy machine fails no test. */
const PATIENT = { poll: { timeout: 20_000 } };

export default defineConfig({
  test: {
    projects: [
      {
        resolve: { alias },
        test: {
          name: 'unit',
          include: ['test/**/*.test.ts'],
          exclude: database,
          environment: 'node',
          testTimeout: 60_000,
          expect: PATIENT,
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
          testTimeout: 60_000,
          expect: PATIENT,
        },
      },
    ],
  },
});
