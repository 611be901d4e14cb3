import { describe } from 'vitest';
import { transientRows } from './transient.js';
import { checkPublished } from './table.js';

describe('heat that runs into walls with time', () => checkPublished(transientRows));
