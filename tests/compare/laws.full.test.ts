import { test } from 'vitest';
import { checkPairs, checkRenames } from './laws.js';

test('any two jobs', () => checkPairs(400));
test('blocks that have other names', () => checkRenames(200));
