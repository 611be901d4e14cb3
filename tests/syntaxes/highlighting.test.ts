import type { IGrammar } from 'vscode-textmate';
import { beforeAll, describe, expect, test } from 'vitest';
import { highlights, type HighlightKind } from '../../language/src/editing/highlight.js';
import { allConstructs } from '../editing/all-constructs.js';
import { rawOf } from '../editing/sample.js';
import { examplePaths, exampleText } from '../support/workspace.js';
import { loadGrammar, tokenise } from './tokenise.js';

let grammar: IGrammar;
beforeAll(async () => { grammar = await loadGrammar(); });
const scopes = (text: string): string[] => tokenise(grammar, text).map(({ text: piece, scope }) => `${scope} ${piece}`);

describe('scopes', () => {
    test.each<[string, string, string[]]>([
        ['an inch mark opens no text', 'top 34" "text"', ['support.type.property-name top', 'constant.numeric.length 34"', 'string.quoted.double "text\"']],
        ['feet and inches', 'height 7\'6"', ['support.type.property-name height', 'constant.numeric.length 7\'6"']],
        ['a size', 'size 8" x 4 1/2"', ['support.type.property-name size', 'constant.numeric.length 8"', 'keyword.operator.word x', 'constant.numeric.length 4 1/2"']],
        ['units and money', 'price 1.20 USD per ft', ['support.type.property-name price', 'constant.numeric.quantity 1.20 USD', 'keyword.operator.word per', 'constant.language ft']],
        ['a date', 'measured_on 2026-09-14', ['support.type.property-name measured_on', 'constant.numeric.date 2026-09-14']],
        ['a header', 'bench upper on back, left {', ['keyword.other.block bench', 'entity.name.type upper', 'keyword.operator.word on', 'constant.language.wall back', 'punctuation.separator ,', 'constant.language.wall left', 'punctuation.section.block {']],
        ['a header without a name', 'sensor on right { from front 38" }', ['keyword.other.block sensor', 'keyword.operator.word on', 'constant.language.wall right', 'punctuation.section.block {', 'support.type.property-name from', 'constant.language.wall front', 'constant.numeric.length 38"', 'punctuation.section.block }']],
        ['a word that is a block and a fact', 'control   outside', ['support.type.property-name control', 'constant.language outside']],
        ['figures inside names', 'lining cedar_1x4 3/4"', ['support.type.property-name lining', 'variable.other cedar_1x4', 'constant.numeric.length 3/4"']],
        ['a calculation', 'depth 72" - 2 * 1 mm', ['support.type.property-name depth', 'constant.numeric.length 72"', 'keyword.operator.arithmetic -', 'constant.numeric 2', 'keyword.operator.arithmetic *', 'constant.numeric.quantity 1 mm']],
        ['a remark', 'top 37" // 7\'0" and "more', ['support.type.property-name top', 'constant.numeric.length 37"', 'comment.line.double-slash // 7\'0" and "more']],
        ['no remark in a text', 'note "a // b"', ['support.type.property-name note', 'string.quoted.double "a // b\"']],
        ['a name for a value', 'let half = max(upper.top, w) / 2', ['keyword.other.statement let', 'entity.name.type half', 'keyword.operator.comparison =', 'support.function max', 'punctuation.section.group (', 'variable.other upper', 'punctuation.accessor .', 'variable.other.member top', 'punctuation.separator ,', 'variable.other w', 'punctuation.section.group )', 'keyword.operator.arithmetic /', 'constant.numeric 2']],
        ['a job of a series', 'job one "First" is cottage(side = left)', ['keyword.other.block job', 'entity.name.type one', 'string.quoted.double "First"', 'keyword.operator.word is', 'entity.other.inherited-class cottage', 'punctuation.section.group (', 'variable.other side', 'keyword.operator.comparison =', 'constant.language.wall left', 'punctuation.section.group )']],
        ['a waiver', 'waive head-clearance-too-low on upper because "x" by "y" until 2027-03-01', ['keyword.other.statement waive', 'variable.other head-clearance-too-low', 'keyword.operator.word on', 'variable.other upper', 'keyword.operator.word because', 'string.quoted.double "x"', 'keyword.operator.word by', 'string.quoted.double "y"', 'keyword.operator.word until', 'constant.numeric.date 2027-03-01']],
        ['a choice', 'top if count(bench) >= 2 then 18" else 10"', ['support.type.property-name top', 'keyword.operator.word if', 'support.function count', 'punctuation.section.group (', 'support.class bench', 'punctuation.section.group )', 'keyword.operator.comparison >=', 'constant.numeric 2', 'keyword.operator.word then', 'constant.numeric.length 18"', 'keyword.operator.word else', 'constant.numeric.length 10"']],
        ['a use', 'use "a.hotroom"', ['keyword.control.import use', 'string.quoted.double "a.hotroom\"']],
    ])('%s', (_, text, expected) => expect(scopes(text)).toEqual(expected));
    test('an open text ends with its line', () => expect(scopes('number "24\ntop 37"')).toEqual(['support.type.property-name number', 'string.quoted.double "24', 'support.type.property-name top', 'constant.numeric.length 37"']));
});

/** What the grammar calls what the server knows from reading. */
const expected: Readonly<Record<HighlightKind, RegExp>> = {
    block: /^keyword\.(other\.block|control\.import)$/, property: /^support\.type\.property-name$/, name: /^entity\.name\.type$/, reference: /^variable\.other$/,
    choice: /^constant\.language(\.wall)?$/, connective: /^keyword\.operator\.word$/, figure: /^constant\.numeric/, text: /^string\.quoted\.double$/, remark: /^comment\./, operator: /^keyword\.operator\.(arithmetic|comparison)$/,
    statement: /^keyword\.other\.statement$/, function: /^support\.function$/, member: /^variable\.other\.member$/, parameter: /^variable\.other$/, base: /^entity\.other\.inherited-class$/, kind: /^support\.class$/,
};
test.each<readonly [string, string]>([...examplePaths().map(path => [path, exampleText(path)] as const), ['a file that uses every construct', allConstructs]])('%s has the colours the server gives it', (_, text) => {
    const lines = text.split('\n');
    const starts = lines.map((_, i) => lines.slice(0, i).reduce((n, line) => n + line.length + 1, 0));
    const byStart = new Map(tokenise(grammar, text).map(piece => [(starts[piece.line] ?? 0) + piece.start, piece.scope]));
    const wrong = highlights(rawOf(text)).filter(({ start, kind }) => !expected[kind].test(byStart.get(start) ?? '')).map(({ start, end, kind }) => `${text.slice(start, end)}: ${kind}, not ${byStart.get(start) ?? 'nothing'}`);
    expect(wrong).toEqual([]);
});
