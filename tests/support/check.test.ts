import { expect, test } from 'vitest';
import { analyzeText, exampleText } from './workspace.js';
import { summary } from './check.js';
import { topLevelPieces, withStandardJob } from './standard-job.js';

test('the standard job and its catalogues are sound: nothing graver than a remark', async () => {
    expect(summary(await analyzeText(exampleText('birch-point.hotroom'))).filter(line => /^(error|warning)/.test(line))).toEqual([]);
    expect(summary(await analyzeText(exampleText('catalogue/skerry.hotroom'), {}, 'copy.hotroom'))).toEqual([]);
});
test('a snippet takes the place of the block it names, and a remark takes one away', () => {
    const text = withStandardJob('bench upper on back { top 1" }\n// without vent exhaust\nrules iec');
    expect(text.match(/bench upper/g)).toHaveLength(1);
    expect(text).not.toContain('vent exhaust on');
    expect(text.match(/^\s*rules/gm)).toHaveLength(1);
    expect(text).toContain('heater stove on right');
});
test('markers stay with the line they mark', () => {
    expect(topLevelPieces('a {\n  b 1\n  // ^ error: x\n}\nc 2\n// ^ error: y').map(piece => piece.text)).toEqual(['a {\n  b 1\n  // ^ error: x\n}', 'c 2\n// ^ error: y']);
});
