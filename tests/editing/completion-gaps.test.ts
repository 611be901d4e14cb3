import { expect, test } from 'vitest';
import { completionsAt } from '../../language/src/editing/complete.js';
import type { Offer } from '../../language/src/editing/offer.js';
import { endOf } from '../../language/src/syntax/token-list.js';
import { TestWorkspace, exampleText } from '../support/workspace.js';
import { lexer, rawOf, sightOf } from './sample.js';

const sight = sightOf({
    panel_system: ['Skerry'], door_model: ['Leaf24'], bench_build: ['Slatted'], heater_model: ['Tarn60'], bench: ['upper', 'lower'], heater: ['stove'], light_model: ['Ember'],
    stock: ['alder_1x4'], material: ['stone_wool'], screw: ['bench_screw'], window_model: ['View18'],
}, ['catalogue/skerry.hotroom']);

/** A snippet with its samples left as they are; where there is nothing to choose from, a word. */
const filled = ({ text, isSnippet }: Offer): string => isSnippet
    ? text.replace(/\$\{\d+\|([^|,]*(?:\\,[^|,]*)*)[^}]*\|\}/g, '$1').replace(/\$\{\d+:((?:[^}\\]|\\.)*)\}/g, '$1').replace(/\$\{\d+\}|\$\d/g, '').replace(/\\(.)/g, '$1') : text;

/** Every offset at which a token begins or ends, and the middle of every stretch of white space. */
function gapsOf(text: string): number[] {
    const { tokens } = lexer.raw(text);
    const offsets = new Set([0, text.length]);
    for (const token of tokens) { offsets.add(token.startOffset); offsets.add(endOf(token)); }
    for (const match of text.matchAll(/\s{2,}/g)) offsets.add(match.index + (match[0].length >> 1));
    return [...offsets].sort((a, b) => a - b);
}

const never = ['unknown-word', 'fact-repeated', 'block-repeated', 'two-facts-on-one-line', 'brace-without-partner', 'line-without-a-word', 'unexpected-character', 'unknown-unit', 'reading-failed'];
/** A fact or block put where nothing stood brings no mistake at all; what takes the place of a word may not fit the value behind it, and a word may want another. */
const neverWhenNew = [...never, 'part-not-expected', 'value-of-another-kind', 'wall-missing', 'value-missing', 'unknown-name', 'name-taken', 'part-out-of-place', 'text-not-closed', 'unit-missing', 'value-out-of-range'];

test('whatever is offered at any gap of a job can stand there', { timeout: 120_000 }, async () => {
    const text = exampleText('birch-point.hotroom');
    const workspace = new TestWorkspace();
    workspace.addCatalogues();
    await workspace.build();
    const tried = new Set<string>();
    let offered = 0;
    for (const offset of gapsOf(text)) {
        const raw = rawOf(text);
        for (const offer of completionsAt(raw, offset, sight)) {
            offered++;
            expect(offer.start <= offset && offset <= offer.end, `${offer.label} replaces the cursor's place`).toBe(true);
            // The same offer in the same block is tried at its first gap of each kind only; there are thousands.
            const line = text.slice(text.lastIndexOf('\n', offer.start - 1) + 1, offer.start).trim();
            const key = `${offer.kind} ${offer.label} ${line.replace(/[^;{]*$/, '')} ${offer.end - offer.start > 0 ? 'instead' : 'new'} ${/\S/.test(line) ? 'inline' : 'own'}`;
            if (tried.has(key)) continue;
            tried.add(key);
            const edited = text.slice(0, offer.start) + filled(offer) + text.slice(offer.end);
            const document = workspace.add(`job-${tried.size}.hotroom`, edited);
            await workspace.build(document);
            const wrong = workspace.analyze(document, { rules: [] }).findings.filter(({ rule, at }) => (offer.start === offer.end && offer.isSnippet ? neverWhenNew : never).includes(rule) && at.start <= offer.start + filled(offer).length && offer.start <= at.end);
            expect(wrong.map(({ rule, message }) => `${rule}: ${message}`), `${offer.label} at ${offset} in ‘${line}’`).toEqual([]);
        }
    }
    expect(offered).toBeGreaterThan(1500);
    expect(tried.size).toBeGreaterThan(120);
});

test('completion answers at every offset of every cut-off beginning', () => {
    const text = exampleText('birch-point.hotroom');
    for (let length = 0; length <= text.length; length += 7) {
        const raw = rawOf(text.slice(0, length));
        expect(Array.isArray(completionsAt(raw, length, sight))).toBe(true);
    }
});
