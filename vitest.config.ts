import { defineConfig } from 'vitest/config';

/** `npm test` leaves out the long sweeps and fuzz runs (`*.full.test.ts`); `npm run test:all` sets HOTROOM_FULL and runs everything. */
const isFull = process.env['HOTROOM_FULL'] === '1';

export default defineConfig({
    test: {
        include: ['tests/**/*.test.ts'],
        exclude: ['tests/editor/**', '**/node_modules/**', ...(isFull ? [] : ['tests/**/*.full.test.ts'])],
        testTimeout: isFull ? 600_000 : 30_000,
    },
});
