import { columnRows } from './columns.js';
import { checkPublished } from './table.js';

checkPublished([...columnRows]);
