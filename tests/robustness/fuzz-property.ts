import fc from 'fast-check';
import { expect } from 'vitest';
import { examplePaths } from '../support/workspace.js';
import { DamageBench, showsGrammar } from './damage.js';
import { brokenText, wounded } from './fuzz.js';

/** Written out, with calculations, as a series, and as house rules; wounds are made in each. */
const woundedFiles = ['birch-point.hotroom', 'house/petrel-wharf.hotroom', 'line/skua.hotroom', 'house/rules.hotroom'];

/**
 * No text, however broken, throws; the parser never sees a mistake; every finding lies in the text; no message shows the grammar; equal text gives
 * equal findings.
 */
export async function checkAnyText(runs: number, seed?: number): Promise<void> {
    const bench = await DamageBench.open('job.hotroom', examplePaths().filter(path => !path.startsWith('mistakes/')));
    await fc.assert(fc.asyncProperty(fc.oneof(brokenText, ...woundedFiles.map(wounded)), async text => {
        const analysis = await bench.analyze(text);
        expect(analysis.findings.filter(finding => finding.rule === 'reading-failed').map(finding => finding.message)).toEqual([]);
        for (const { at, message, fixes = [] } of analysis.findings) {
            expect(at.start).toBeGreaterThanOrEqual(0);
            expect(at.end).toBeGreaterThanOrEqual(at.start);
            expect(at.end).toBeLessThanOrEqual(Math.max(text.length, at.start + 1));
            // What the designer wrote may be quoted in the message and may be any word.
            expect(showsGrammar(message.replace(/‘[^’]*’|"[^"]*"/g, ''))).toBe(false);
            for (const { edits } of fixes) for (const { span } of edits) expect(span.end).toBeLessThanOrEqual(text.length);
        }
        const again = await bench.analyze(text);
        expect(again.findings).toEqual(analysis.findings);
    }), { numRuns: runs, ...(seed !== undefined && { seed }) });
}
