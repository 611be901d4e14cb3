import { anthropometryRows } from './anthropometry.js';
import { checkPublished } from './table.js';

checkPublished(anthropometryRows);
