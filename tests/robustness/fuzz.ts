import fc from 'fast-check';
import { exampleText } from '../support/workspace.js';
import { functions } from '../../language/src/model/functions.js';
import { vocabulary } from '../../language/src/vocabulary/index.js';

/** Bits of text a designer, a clumsy paste or a hostile file could hold. */
const bits = [
    ...Object.keys(vocabulary), 'top', 'depth', 'width', 'on', 'from', 'left', 'to', 'x', 'per', 'yes', 'use', '"text"', '"open', '34 3/4"', '7\'6"', '7\'6', '7\u20196\u201d', '2,5 m', '2210 mm', '240 V single_phase',
    ...Object.keys(functions), 'max(bench.top)', 'round_down(', 'opposite(left', 'if', 'then', 'else', 'and', 'or', 'let', 'let a =', 'let a = b', 'let b = a + 1"', 'is', 'is skua(72", left)', 'w = 3"', 'takes length', 'one_of left, right', 'otherwise 3"',
    'when upper.top > 30"', 'each bench', 'require bench.top <= 38"', 'because "house"', 'waive head-clearance-too-low on upper', 'by "office"', 'until 2027-03-01', 'room.inside.volume', 'upper.ledger.top', 'stove.model.power', 'bench.', '.top', '6 kW', '68 degF', '12.40 USD', '2027-02-30', '3/0"', '10mmx', '{', '}', '(', ')', ',', ';', '.', '+', '-', '*', '/', '=', '!=', '<', '<=', '>', '>=', '\n', '\n', '\n', '\t', '\r\n', '// remark', '\u0000', '\ud83d\udd25', '\u2028', '\\', '\'', '"', '#', '%', '34½"', '–', '−2"', '68 °F', '36\'\'', '×', '8"x4"', '“text”', '‘', '\u2009', '__proto__', 'constructor', 'toString',
];
export const brokenText: fc.Arbitrary<string> = fc.array(fc.oneof({ arbitrary: fc.constantFrom(...bits), weight: 8 }, { arbitrary: fc.string({ unit: 'binary', maxLength: 6 }), weight: 1 }), { maxLength: 60 }).map(parts => parts.join(' '));

/** A file of many jobs with the first of them only: the others repeat it, and each is worked out anew for every text. */
export function oneJobOf(text: string): string {
    let jobs = 0;
    return text.split('\n').filter(line => !/^job .* is /.test(line) || jobs++ === 0).join('\n');
}

/** A sound file with a few stretches cut out, doubled, or replaced by bits. */
export const wounded = (path: string): fc.Arbitrary<string> => {
    // Of a long line of jobs, one is as good as all. The text stands at the top of examples/ wherever it is from.
    const text = oneJobOf(exampleText(path)).replaceAll('"../', '"').replace('"rules.', '"house/rules.');
    const wound = fc.record({ at: fc.nat(text.length), length: fc.nat(40), by: fc.oneof(fc.constant(''), fc.constantFrom(...bits), fc.nat(text.length).map(at => text.slice(at, at + 30))) });
    return fc.array(wound, { minLength: 1, maxLength: 5 }).map(wounds => wounds.reduce((result, { at, length, by }) => result.slice(0, at) + by + result.slice(at + length), text));
};
