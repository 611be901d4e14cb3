import fc from 'fast-check';
import { expect } from 'vitest';

/**
 * Properties of the quick run are tried on the same cases every time, so that a red run means a changed product; the full run (`*.full.test.ts`)
 * tries new cases each time and prints the seed of what fails.
 */
fc.configureGlobal(expect.getState().testPath?.endsWith('.full.test.ts') ? {} : { seed: 20_261_124 });
