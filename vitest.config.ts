import { availableParallelism } from 'node:os';
import { defineConfig } from 'vitest/config';

/** Tests that start threads or processes of their own, or put things into the process: each file gets a process to itself. */
const alone = ['tests/engines/stock/highs-in-worker.test.ts', 'tests/server/cli/**/*.test.ts', 'tests/server/lsp/{settings,stdio,pull-diagnostics}.test.ts', 'tests/invalidation/**/*.test.ts'];

/** `npm test` leaves out the long sweeps and fuzz runs (`*.full.test.ts`); `npm run test:all` runs everything with `--mode full`. */
export default defineConfig(({ mode }) => {
    const isFull = mode === 'full';
    const exclude = ['tests/editor/**', '**/node_modules/**', ...(isFull ? [] : ['tests/**/*.full.test.ts'])];
    const setupFiles = ['tests/support/seed.ts'];
    const testTimeout = isFull ? 900_000 : 30_000;
    return {
        test: {
            // Vitest leaves one processor to itself, which needs it at the beginning only.
            maxWorkers: availableParallelism(),
            projects: [
                // These share their modules: reading grammar and rules anew for each of some three hundred files would take most of the time.
                { test: { name: 'shared', include: ['tests/**/*.test.ts'], exclude: [...exclude, ...alone], isolate: false, testTimeout, setupFiles } },
                { test: { name: 'alone', include: alone, exclude, testTimeout, setupFiles } },
            ],
        },
    };
});
