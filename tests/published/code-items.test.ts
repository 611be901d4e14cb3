import { codeItemRows } from './code-items.js';
import { checkPublished } from './table.js';

checkPublished(codeItemRows);
