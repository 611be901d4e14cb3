import { test } from 'vitest';
import { checkAnyText } from './fuzz-property.js';

test('any text is read without an exception and with findings that lie in it', () => checkAnyText(120, 20_261_124));
