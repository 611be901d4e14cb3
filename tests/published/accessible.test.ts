import { accessibleRows } from './accessible.js';
import { checkPublished } from './table.js';

checkPublished(accessibleRows);
