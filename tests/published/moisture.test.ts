import { describe } from 'vitest';
import { moistureRows } from './moisture.js';
import { checkPublished } from './table.js';

describe('moisture and movement of wood', () => checkPublished(moistureRows));
