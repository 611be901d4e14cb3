import { defineConfig } from 'vitest/config';

/** `npm test` leaves out the long sweeps and fuzz runs (`*.full.test.ts`); `npm run test:all` runs everything with `--mode full`. */
export default defineConfig(({ mode }) => {
    const isFull = mode === 'full';
    return {
        test: {
            include: ['tests/**/*.test.ts'],
            exclude: ['tests/editor/**', '**/node_modules/**', ...(isFull ? [] : ['tests/**/*.full.test.ts'])],
            testTimeout: isFull ? 900_000 : 30_000,
        },
    };
});
