import { describe } from 'vitest';
import { steamRows } from './steam.js';
import { checkPublished } from './table.js';

describe('steam and moist air', () => checkPublished(steamRows));
