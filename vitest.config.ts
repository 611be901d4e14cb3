import { defineConfig } from 'vitest/config';

/** `npm test` leaves out the long sweeps and fuzz runs (`*.full.test.ts`); `npm run test:all` runs everything with `--mode full`. */
export default defineConfig(({ mode }) => {
    const isFull = mode === 'full';
    return {
        test: {
            include: ['tests/**/*.test.ts'],
            exclude: ['tests/editor/**', '**/node_modules/**', ...(isFull ? [] : ['tests/**/*.full.test.ts'])],
            // Test files share their modules: reading grammar and rules anew for each of some three hundred files would take most of the time.
            isolate: false,
            testTimeout: isFull ? 900_000 : 30_000,
        },
    };
});
