import { test } from 'vitest';
import { checkAnyText } from './fuzz-property.js';

// A fresh seed every run; fast-check prints the seed and the smallest text that fails.
test('any text, three thousand of them', () => checkAnyText(3000));
