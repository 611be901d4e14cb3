import fc from 'fast-check';
import { createDefaultCoreModule, createDefaultSharedCoreModule, createLangiumParser, CstUtils, EmptyFileSystem, inject, isAstNode, isReference, type AstNode, type Module, type ParseResult } from 'langium';
import { describe, expect, test } from 'vitest';
import { HotroomGeneratedModule, HotroomGeneratedSharedModule } from '../../language/src/syntax/generated/module.js';
import { createHotroomServices, hotroomModule, hotroomSharedModule, type HotroomServices } from '../../language/src/syntax/module.js';
import { writeFile } from '../properties/job-text.js';
import { fileOf, randomJob } from '../properties/random-job.js';
import { exampleText, examplePaths } from '../support/workspace.js';
import { randomExpression, standing } from './random-expression.js';

const { hotroom } = createHotroomServices();
/** The parser that Langium makes of the grammar, over the same lexer; texts stay as written. */
function generatedParser(): { parse: (text: string) => ParseResult } {
    const shared = inject(createDefaultSharedCoreModule(EmptyFileSystem), HotroomGeneratedSharedModule, hotroomSharedModule);
    const asWritten: Module<HotroomServices, object> = { parser: { ValueConverter: () => ({ convert: (input: string) => input }) } } as object;
    return createLangiumParser(inject(createDefaultCoreModule({ shared }), HotroomGeneratedModule, hotroomModule, asWritten));
}
const generated = generatedParser();

/** A tree with the place of every node, as plain data. */
function plain(node: AstNode): unknown {
    const values = Object.entries(node).filter(([key]) => !key.startsWith('$')).sort(([a], [b]) => a < b ? -1 : 1).map(([key, value]: [string, unknown]) => [key, plainValue(value)]).filter(([, value]) => value !== undefined);
    return { is: node.$type, at: node.$cstNode?.text === '' || node.$type === 'File' ? undefined : [node.$cstNode?.offset, node.$cstNode?.end], in: node.$container?.$type, as: node.$containerProperty, index: node.$containerIndex, values };
}
/** The tidying stands a word of no letters in for a value in empty brackets. The generated parser loses it, and with it what holds nothing else. */
const isNothing = (node: unknown): boolean => isAstNode(node) && (node.$type === 'Word' ? !('ref' in node && isReference(node.ref) && node.ref.$refText !== '')
    : ['Phrase', 'Binary', 'Group', 'Negative', 'Size', 'Range'].includes(node.$type) && Object.entries(node).every(([key, value]: [string, unknown]) => key.startsWith('$') || key === 'operator' || (Array.isArray(value) ? value.every(isNothing) : isNothing(value))));
function plainValue(value: unknown): unknown {
    if (Array.isArray(value)) return value.filter(item => !isNothing(item)).map(plainValue);
    if (isNothing(value)) return undefined;
    if (isReference(value)) return { names: value.$refText, at: [value.$refNode?.offset, value.$refNode?.end] };
    return isAstNode(value) ? plain(value) : value;
}
const bothRead = (text: string): readonly [unknown, unknown] => {
    const [ours, theirs] = [hotroom.parser.LangiumParser.parse(text), generated.parse(text)];
    expect([ours.parserErrors.length, theirs.parserErrors.length]).toEqual([0, 0]);
    return [plain(ours.value), plain(theirs.value)];
};
/** Whether a token stands for what was written longer or shorter, such as 68 degF for 68F: the generated parser takes its own length for that of the text. */
const hasOtherLengths = (text: string): boolean => hotroom.parser.Lexer.tokenize(text).tokens.some(({ image, startOffset, endOffset }) => image !== '' && image.length !== (endOffset ?? startOffset) + 1 - startOffset);
const withoutEnds = (tree: unknown): unknown => JSON.parse(JSON.stringify(tree, (key, value: unknown) => key === 'at' && Array.isArray(value) ? value.slice(0, 1) : value)) as unknown;
/** What the tidying found wrong with a text. */
const problemsIn = (text: string): readonly unknown[] => (hotroom.parser.Lexer.tokenize(text).report as unknown as { readonly problems: readonly unknown[] }).problems;
function expectSame(text: string): void {
    const [ours, theirs] = hasOtherLengths(text) ? bothRead(text).map(withoutEnds) : bothRead(text);
    expect(ours, text).toEqual(theirs);
}

describe('the reader makes the tree that the grammar describes', () => {
    test.each(examplePaths())('of %s', path => { expectSame(exampleText(path)); });
    test.each([
        ['nothing', ''], ['remarks only', '// one\n\n// two\n'], ['a word', 'job'], ['an empty block', 'job a { }'], ['two facts on a line', 'job a { number "1"; revision "B" }'],
        ['arithmetic', 'job a { room { width 2 * (72" - 3 x - 1) / -4 + room.inside.width - 1 } }'],
        ['a size of sums', 'job a { vent b on left { size 8" + 1" x 4" - 1/2" } }'], ['a range of sizes', 'catalogue c { panel_system d { made_to_measure 1" x 2" to 3" x 4" } }'],
        ['several phrases', 'job a { site { clear front 40", left 2" x 3", right } }'], ['names like operators', 'job x { bench to on back { build x; top 2" } }'],
        ['a date and texts', 'job a { site { measured_on 2026-09-14; measured_by "A \\"B\\" C" } }'], ['a path of names', 'job a { room { width b.c.d } }'],
        ['unfinished', 'job a {\n    room { width\n    bench upper on {'], ['brackets left open', 'job a { room { width (72" - ( 2"\n depth 3" } }'], ['nothing in brackets', 'job a { room { width () } }'],
    ])('of %s', (_, text) => { expectSame(text); });
    test('of random jobs', () => { fc.assert(fc.property(randomJob, ({ job }) => { expectSame(writeFile(fileOf(job), 'in', 'compact')); }), { numRuns: 60 }); });
    test('of random expressions, which are sound wherever one may stand', () => {
        fc.assert(fc.property(randomExpression, expression => {
            for (const text of standing(expression)) {
                expectSame(text);
                expect(problemsIn(text), text).toEqual([]);
            }
        }), { numRuns: 200 });
    });
    test.each(['birch-point.hotroom', 'house/petrel-wharf.hotroom', 'house/rules.hotroom', 'line/skua.hotroom'])('of any damage done to %s', path => {
        const text = exampleText(path);
        const damage = fc.record({ at: fc.nat({ max: text.length }), length: fc.nat({ max: 12 }), insert: fc.constantFrom('', '{', '}', '(', ')', ',', '"', '\n', ' x ', ' to ', ' if ', ' then ', ' else ', ' and ', ' or ', '=', '!=', '<=', 'max(', ' is ', '-', '- ', ' 34"', ' 12,5', '§', ';', '.', '*', '/') });
        fc.assert(fc.property(fc.array(damage, { minLength: 1, maxLength: 6 }), all => {
            expectSame(all.reduce((damaged, { at, length, insert }) => damaged.slice(0, at) + insert + damaged.slice(at + length), text));
        // Of a line of rooms every text is longer, and its rooms are alike.
        }), { numRuns: path.startsWith('line/') ? 30 : 150 });
    });
});

describe('places', () => {
    const text = '// first\r\njob a {\n    bench upper on back { top 37"; in_front_of lower }\r}\n';
    const root = hotroom.parser.LangiumParser.parse(text).value.$cstNode!;
    test('the word under every offset is the one the generated tree has, with its line', () => {
        const theirs = generated.parse(text).value.$cstNode!;
        for (let offset = 0; offset <= text.length; offset++) {
            const word = CstUtils.findLeafNodeAtOffset(theirs, offset);
            const isName = word?.astNode.$type === 'Word';
            const found = CstUtils.findLeafNodeAtOffset(root, offset);
            expect(found && { text: found.text, range: found.range }, `at ${offset}`).toEqual(isName ? { text: word.text, range: word.range } : undefined);
        }
    });
    test('lines end as an editor ends them', () => {
        expect(root.range.start).toEqual({ line: 1, character: 0 });
        expect(root.range.end).toEqual({ line: 3, character: 1 });
    });
});
