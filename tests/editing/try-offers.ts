import { expect } from 'vitest';
import { completionsAt } from '../../language/src/editing/complete.js';
import type { Analysis } from '../../language/src/analyze.js';
import type { Offer, Sight } from '../../language/src/editing/offer.js';
import { endOf } from '../../language/src/syntax/token-list.js';
import { TestWorkspace } from '../support/workspace.js';
import { lexer, rawOf, sightOf, sightOfAnalysis } from './sample.js';

export const catalogueNames = {
    panel_system: ['Skerry'], door_model: ['Leaf24'], bench_build: ['Slatted'], heater_model: ['Tarn60'], bench: ['upper', 'lower'], heater: ['stove'], light_model: ['Ember'],
    stock: ['alder_1x4'], material: ['stone_wool'], screw: ['bench_screw'], window_model: ['View18'],
};
export const sight = sightOf(catalogueNames, ['catalogue/skerry.hotroom']);

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
const neverWhenNew = [...never, 'part-not-expected', 'value-of-another-kind', 'wall-missing', 'value-missing', 'unknown-name', 'name-taken', 'part-out-of-place', 'text-not-closed', 'unit-missing', 'value-out-of-range', 'name-in-calculation', 'mixed-dimensions', 'name-without-value', 'argument-not-expected', 'argument-does-not-fit', 'argument-missing', 'nothing-to-override', 'waiver-incomplete', 'made-from-itself'];

/** The text with an offer taken; one that leads on is followed until a name is whole. */
function taken(text: string, offer: Offer, sightHere: Sight): string {
    let edited = text.slice(0, offer.start) + filled(offer) + text.slice(offer.end);
    let cursor = offer.start + filled(offer).length;
    for (let more = offer, steps = 0; more.leadsOn; steps++) {
        const next = completionsAt(rawOf(edited), cursor, sightHere).find(other => !other.leadsOn) ?? completionsAt(rawOf(edited), cursor, sightHere)[0];
        if (!next || steps > 3) throw new Error(`${offer.label} leads nowhere in ‘${edited.slice(edited.lastIndexOf('\n', cursor) + 1, cursor)}’`);
        edited = edited.slice(0, next.start) + filled(next) + edited.slice(next.end);
        cursor = next.start + filled(next).length;
        more = next;
    }
    return edited;
}

/** Tries every offer at every gap; the same offer in the same surroundings is tried at its first gap only, for there are thousands. */
export async function tryAll(text: string, sightFor: (analysis: Analysis) => Sight, every = 1): Promise<{ offered: number; tried: number }> {
    const workspace = new TestWorkspace();
    workspace.addCatalogues();
    const original = workspace.add('original.hotroom', text);
    await workspace.build();
    const sightHere = sightFor(workspace.analyze(original, { rules: [] }));
    const tried = new Set<string>();
    let offered = 0;
    for (const offset of gapsOf(text).filter((_, i) => i % every === 0)) {
        const raw = rawOf(text);
        for (const offer of completionsAt(raw, offset, sightHere)) {
            offered++;
            expect(offer.start <= offset && offset <= offer.end, `${offer.label} replaces the cursor's place`).toBe(true);
            const line = text.slice(text.lastIndexOf('\n', offer.start - 1) + 1, offer.start).trim();
            const key = `${offer.kind} ${offer.label} ${line.replace(/[^;{]*$/, '')} ${offer.end - offer.start > 0 ? 'instead' : 'new'} ${/\S/.test(line) ? 'inline' : 'own'}`;
            if (tried.has(key)) continue;
            tried.add(key);
            const edited = taken(text, offer, sightHere);
            const document = workspace.add(`job-${tried.size}.hotroom`, edited);
            await workspace.build(document);
            const end = edited.length - (text.length - offer.end);
            const wrong = workspace.analyze(document, { rules: [] }).findings.filter(({ rule, at }) => (offer.start === offer.end && (offer.isSnippet || inValues.has(offer.kind)) ? neverWhenNew : never).includes(rule) && at.uri === document.uri.toString() && at.start <= end && offer.start <= at.end);
            expect(wrong.map(({ rule, message }) => `${rule}: ${message}`), `${offer.label} (${edited.slice(offer.start, end)}) at ${offset} in ‘${line}’`).toEqual([]);
            workspace.remove(document);
        }
    }
    return { offered, tried: tried.size };
}
const inValues: ReadonlySet<Offer['kind']> = new Set(['value', 'function', 'operator', 'name', 'word', 'wall']);

export const sightOfConstructs = (analysis: Analysis): Sight => sightOfAnalysis(analysis, { ...catalogueNames, heater_model: ['Tarn60', 'Tarn61'], series: ['cottage'] }, ['catalogue/skerry.hotroom', 'catalogue/heaters.hotroom']);
