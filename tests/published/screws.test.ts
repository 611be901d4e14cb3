import { dowelRows, lateralRows, withdrawalRows } from './screws.js';
import { checkPublished } from './table.js';

checkPublished([...lateralRows, ...withdrawalRows, ...dowelRows]);
