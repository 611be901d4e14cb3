import { checkPublished } from './table.js';
import { zoneRows } from './zones.js';

checkPublished(zoneRows);
