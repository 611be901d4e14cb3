import { ampacityRows, correctionRows, currentRows, derateRow, deviceRows, resistanceRows } from './electrical.js';
import { capacityRows, deviceRows as iecDeviceRows, factorRows, productRows } from './electrical-iec.js';
import { checkPublished } from './table.js';

checkPublished([...currentRows, derateRow, ...ampacityRows, ...correctionRows, ...deviceRows, ...resistanceRows]);
checkPublished([...capacityRows, ...factorRows, ...productRows, ...iecDeviceRows]);
