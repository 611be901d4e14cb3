import { expect, test } from 'vitest';
import { analyzeText, exampleText } from './workspace.js';
import { summary } from './check.js';
test('the standard job and catalogues read without a finding', async () => {
    expect(summary(await analyzeText(exampleText('birch-point.hotroom')))).toEqual([]);
    expect(summary(await analyzeText(exampleText('catalogue/skerry.hotroom')))).toEqual([]);
});
