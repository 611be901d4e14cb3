import { describe, expect, test } from 'vitest';
import type { ReportedFinding } from '../../language/src/core/finding.js';
import { examplePaths, exampleText } from '../support/workspace.js';
import { blocksOf, DamageBench, isHit, showsGrammar } from './damage.js';
import { oneJobOf } from './fuzz.js';

/** Most new findings one missing token or one cut file may cause. */
const mostNew = 2;
/** A finding is the same one when its rule and its message are. Places move and findings of the damaged line change by nature. */
const sameAs = (finding: ReportedFinding): string => `${finding.rule}: ${finding.message}`;

describe.each(examplePaths())('%s', path => {
    // Of a long line of jobs made from one series, one: the others repeat it, and all would be worked out anew for each of a thousand damages.
    const text = oneJobOf(exampleText(path));

    test('every token deleted', async () => {
        const bench = await DamageBench.open(path, examplePaths());
        const before = await bench.analyze(text);
        const known = new Set(before.findings.map(sameAs));
        const blocks = blocksOf(before.file, text);
        const wrong: string[] = [];
        for (const { start, end } of bench.tokens(text)) {
            const damaged = text.slice(0, start) + text.slice(end);
            const after = await bench.analyze(damaged);
            const fresh = after.findings.filter(finding => !known.has(sameAs(finding)));
            const spot = `${lineOf(text, start)} ‘${text.slice(start, end)}’`;
            if (fresh.length > mostNew) wrong.push(`${spot}: ${fresh.map(sameAs).join(' || ')}`);
            for (const finding of fresh) if (showsGrammar(finding.message)) wrong.push(`${spot} shows the grammar: ${finding.message}`);
            const afterBlocks = blocksOf(after.file, damaged);
            for (const [key, block] of blocks) {
                const now = afterBlocks.get(key);
                if (isHit(block, start, end, blocks.values()) || (block.mayGo && !now)) continue;
                if (now?.values !== block.values) wrong.push(`${spot} changes ${key}: ${block.values} became ${now?.values ?? 'nothing'}`);
            }
        }
        expect(wrong).toEqual([]);
    });

    test('the file cut after every token', async () => {
        const bench = await DamageBench.open(path, examplePaths());
        const before = await bench.analyze(text);
        const known = new Set(before.findings.map(sameAs));
        const blocks = blocksOf(before.file, text);
        const wrong: string[] = [];
        for (const { start, end } of bench.tokens(text)) {
            const after = await bench.analyze(text.slice(0, end));
            const fresh = after.findings.filter(finding => !known.has(sameAs(finding)));
            const spot = `cut after ${lineOf(text, start)} ‘${text.slice(start, end)}’`;
            if (fresh.length > mostNew) wrong.push(`${spot}: ${fresh.map(sameAs).join(' || ')}`);
            for (const finding of fresh) if (showsGrammar(finding.message)) wrong.push(`${spot} shows the grammar: ${finding.message}`);
            const afterBlocks = blocksOf(after.file, text.slice(0, end));
            for (const [key, block] of blocks) if (block.spans.every(span => span.end <= end) && end < text.length && !block.mayGo && !block.ofSeries && afterBlocks.get(key)?.values !== block.values) wrong.push(`${spot} changes ${key}`);
        }
        expect(wrong).toEqual([]);
    });
});

const lineOf = (text: string, offset: number): string => `line ${text.slice(0, offset).split('\n').length}`;
