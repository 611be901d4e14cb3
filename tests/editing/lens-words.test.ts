import { expect, test } from 'vitest';
import { lensesOf } from '../../language/src/editing/lenses.js';
import { countSeverities, summaryText } from '../../language/src/renderings/findings-text.js';
import { analyzeText } from '../support/workspace.js';

test('the line above a job and the sum of a check use the same words', async () => {
    // a job without site, bench and door draws findings of several severities
    const analysis = await analyzeText('use "catalogue/skerry.hotroom"\njob a {\n    rules us_dwelling\n    room { system Skerry; width 84"; depth 72"; height 7\'0" }\n}\n');
    const [lens] = lensesOf(analysis);
    const words = lens!.title.split(', ');
    expect(words.some(part => part.endsWith(' infos'))).toBe(true);
    const sum = summaryText(countSeverities(analysis.findings), 1);
    for (const part of words) expect(sum).toContain(part);
});
