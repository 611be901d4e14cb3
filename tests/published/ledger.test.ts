import { ledgerRows } from './ledger.js';
import { checkPublished } from './table.js';

checkPublished(ledgerRows);
