import { expect, test } from 'vitest';
import { completionsAt } from '../../language/src/editing/complete.js';
import { endOf } from '../../language/src/syntax/token-list.js';
import { propertiesOf } from '../../language/src/vocabulary/index.js';
import { analyzeText, exampleText } from '../support/workspace.js';
import { allConstructs } from './all-constructs.js';
import { rawOf } from './sample.js';
import { sight, sightOfConstructs, tryAll } from './try-offers.js';

test('whatever is offered at any gap of a job can stand there', { timeout: 120_000 }, async () => {
    const { offered, tried } = await tryAll(exampleText('birch-point.hotroom'), () => sight);
    expect(offered).toBeGreaterThan(1500);
    expect(tried).toBeGreaterThan(120);
});

test('and at every seventeenth gap of a file that uses every construct', { timeout: 120_000 }, async () => {
    const { offered } = await tryAll(allConstructs, sightOfConstructs, 17);
    expect(offered).toBeGreaterThan(150);
});

const texts: readonly (readonly [string, string])[] = [['birch-point.hotroom', exampleText('birch-point.hotroom')], ['every construct', allConstructs]];
test.each(texts)('what a block needs is offered where it is missing: %s', async (_, text) => {
    const analysed = sightOfConstructs(await analyzeText(text));
    const missed: string[] = [];
    let asked = 0;
    for (const fact of rawOf(text).facts) {
        const word = fact.key?.image ?? '';
        const last = fact.tokens.at(-1);
        const needed: [string, number, number][] = [];
        if (last && !fact.body && propertiesOf(fact.scope.kind).get(word)?.property.isRequired) needed.push([word, fact.start, endOf(last)]);
        const clause = fact.tokens.findIndex(({ image }) => image === 'because');
        if (last && word === 'waive' && clause > 0) for (const i of [clause, clause + 2, clause + 4]) needed.push([fact.tokens[i]?.image ?? '', fact.tokens[i]?.startOffset ?? 0, endOf(fact.tokens[i + 1] ?? last)]);
        for (const [label, start, end] of needed) {
            asked++;
            const without = text.slice(0, start) + text.slice(end);
            if (!completionsAt(rawOf(without), start, analysed).some(offer => offer.label === label)) missed.push(`${label} at ${start}`);
        }
    }
    expect(missed).toEqual([]);
    expect(asked).toBeGreaterThan(20);
});

test.each(texts)('completion answers at every offset of every cut-off beginning: %s', (_, text) => {
    for (let length = 0; length <= text.length; length += 7) {
        const raw = rawOf(text.slice(0, length));
        expect(Array.isArray(completionsAt(raw, length, sight))).toBe(true);
    }
});
