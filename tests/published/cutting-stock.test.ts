import { cuttingStock } from './cutting-stock.js';
import { checkPublished } from './table.js';

checkPublished(cuttingStock);
