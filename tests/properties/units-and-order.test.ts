import { expect, test } from 'vitest';
import { checkOrder, checkUnits, inMillimetres } from './units-and-order.js';

test('every length of a text is written in millimetres', () => {
    expect(inMillimetres('job a { site { width 7\'6", 34 3/4", 2 ft; free left }\n sign b { says warning; letters 1/4" } }'))
        .toBe('job a { site { width 2286 mm, 882.65 mm, 609.6 mm; free left }\n sign b { says warning; letters 6.35 mm } }');
});
test('a job in millimetres is the job in inches', () => checkUnits(40, 11));
test('the order of facts and blocks means nothing', () => checkOrder(40, 12));
