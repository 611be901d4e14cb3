import { adjustmentRows } from './adjustments.js';
import { checkPublished } from './table.js';

checkPublished([...adjustmentRows]);
