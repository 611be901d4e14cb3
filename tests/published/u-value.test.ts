import { describe } from 'vitest';
import { uValueRows } from './u-value.js';
import { checkPublished } from './table.js';

describe('heat through layers, glass, wood and openings', () => checkPublished(uValueRows));
