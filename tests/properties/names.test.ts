import { test } from 'vitest';
import { checkLets, checkOverrides, checkSeries } from './names.js';

test('figures given names and calculated with come to the same job', () => checkLets(20, 51));
test('a job made from a series is the job written out', () => checkSeries(20, 52));
test('overrides and variants are the job with the change written in', () => checkOverrides(20, 53));
