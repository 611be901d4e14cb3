import { lumberRows } from './lumber.js';
import { checkPublished } from './table.js';

checkPublished(lumberRows);
