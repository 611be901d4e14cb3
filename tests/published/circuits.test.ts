import { circuitRows } from './circuits.js';
import { checkPublished } from './table.js';

checkPublished(circuitRows);
