import { test } from 'vitest';
import { checkLayout } from './layout.js';

test('formatting a job as a careless hand writes it keeps what it says, and twice is once', () => checkLayout(40, 31));
