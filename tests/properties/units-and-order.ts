import fc from 'fast-check';
import { expect } from 'vitest';
import type { JobAnalysis } from '../../language/src/analyze.js';
import type { Figure } from '../../language/src/core/finding.js';
import { parseLiteral } from '../../language/src/core/literal.js';
import { TICKS_PER_MM } from '../../language/src/core/length.js';
import { lexer } from '../editing/sample.js';
import { JobReader } from './analysed.js';
import { asText, canonicalBlock } from './canonical.js';
import { shuffleBlock } from './job-text.js';
import { fileOf, randomJob } from './random-job.js';

/** The same text with every length written in millimetres, exactly: an inch is 25.4 mm. */
export function inMillimetres(text: string): string {
    const lengths = lexer.raw(text).tokens.filter(({ tokenType, image }) => tokenType.name === 'LENGTH' || (tokenType.name === 'QUANTITY' && /[\d ](in|ft)$/.test(image)));
    return lengths.reverse().reduce((changed, { startOffset, image }) => {
        const ticks = parseLiteral(image)?.value;
        if (!ticks) throw new Error(`No length: ${image}`);
        return `${changed.slice(0, startOffset)}${String(Number(ticks.n) / Number(ticks.d) / TICKS_PER_MM)} mm${changed.slice(startOffset + image.length)}`;
    }, text);
}

const sorted = (items: Iterable<string>): readonly string[] => [...items].sort();
/** Words with every length taken out: what is a round figure in one unit is rounded in the other. */
const withoutLengths = (words: string): string => words.replace(/≈?((\d+')?\d+(\.\d+)?( \d+\/\d+|\/\d+)?("| mm)|\d+')/g, 'a length');
const figure = (value: Figure | undefined): unknown => value?.kind === 'words' ? withoutLengths(value.words) : value;
/** What was found, without the message: it answers in the unit of the writer. */
const findings = ({ findings: all }: JobAnalysis): readonly string[] =>
    sorted(all.map(({ rule, severity, measured, required, subject, citation }) => asText({ rule, severity, measured: figure(measured), required: figure(required), subject, citation })));
const figures = ({ facts }: JobAnalysis): readonly string[] => facts.under().map(({ path, value }) => asText({ path, value: figure(value) }));
/** A list in a message names things in the order written, so its words are compared in any order. */
const messages = ({ findings: all }: JobAnalysis): readonly string[] => sorted(all.map(({ rule, message }) => `${rule}: ${sorted(message.replace(/[,.;]/g, '').split(' ').filter(word => word !== 'and')).join(' ')}`));

/** Inches and millimetres: the same model in ticks, the same results, the same findings. */
export async function checkUnits(numRuns: number, seed: number): Promise<void> {
    const [inch, metric] = [new JobReader(), new JobReader(inMillimetres)];
    await fc.assert(fc.asyncProperty(randomJob, async ({ job }) => {
        const here = await inch.job(fileOf(job), 'in');
        const there = await metric.job(fileOf(job), 'mm');
        expect(canonicalBlock(there.job.block)).toEqual(canonicalBlock(here.job.block));
        expect(there.results.parts.map(asText)).toEqual(here.results.parts.map(asText));
        expect(asText(there.results.shell?.result)).toBe(asText(here.results.shell?.result));
        expect(asText(there.results.things)).toBe(asText(here.results.things));
        expect(figures(there)).toEqual(figures(here));
        expect(findings(there)).toEqual(findings(here));
    }), { numRuns, seed });
}

/** Facts and blocks in any order: the same model, facts, parts and findings, word for word. */
export async function checkOrder(numRuns: number, seed: number): Promise<void> {
    const reader = new JobReader();
    await fc.assert(fc.asyncProperty(randomJob, fc.infiniteStream(fc.nat({ max: 1_000_000 })), async ({ job }, numbers) => {
        const here = await reader.job(fileOf(job));
        const there = await reader.job({ ...fileOf(shuffleBlock(job, count => (numbers.next().value ?? 0) % count)), uses: [...fileOf(job).uses].reverse() });
        expect(canonicalBlock(there.job.block)).toEqual(canonicalBlock(here.job.block));
        expect(sorted(there.results.parts.map(asText))).toEqual(sorted(here.results.parts.map(asText)));
        expect(sorted(there.facts.under().map(({ path, value }) => asText({ path, value })))).toEqual(sorted(here.facts.under().map(({ path, value }) => asText({ path, value }))));
        expect(messages(there)).toEqual(messages(here));
    }), { numRuns, seed });
}
