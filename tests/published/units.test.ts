import { checkPublished } from './table.js';
import { unitRows } from './units.js';

checkPublished(unitRows);
