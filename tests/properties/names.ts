import fc from 'fast-check';
import { expect } from 'vitest';
import type { JobAnalysis } from '../../language/src/analyze.js';
import { JobReader } from './analysed.js';
import { asText, canonicalBlock } from './canonical.js';
import { isBlockText, shuffleBlock, writeFile, writeSixteenths, writeValue, type BlockText, type FactText, type Piece } from './job-text.js';
import { fileOf, randomJob } from './random-job.js';

/** Decides among `count` things: it answers with an index below it. */
type Pick = (count: number) => number;
const picks = fc.infiniteStream(fc.nat({ max: 1_000_000 })).map((numbers): Pick => count => (numbers.next().value ?? 0) % count);

const isFigure = (piece: Piece): piece is { readonly sixteenths: number } => typeof piece === 'object' && 'sixteenths' in piece;
/** Figures of these stand in a size or among words, where a name may stand too; walls in headers are left as they are. */
function lift(block: BlockText, pick: Pick, name: (figure: number) => string): BlockText {
    const swap = (piece: Piece): Piece => isFigure(piece) && pick(2) === 0 ? name(piece.sixteenths) : piece;
    return { header: block.header, body: block.body.map(item => isBlockText(item) ? lift(item, pick, name) : { key: item.key, value: item.value.map(swap) }) };
}

/** A calculation that comes to a figure, written with other figures, names given before it, functions and choices. */
function calculation(figure: number, pick: Pick, known: readonly { readonly name: string; readonly figure: number }[]): string {
    const text = writeSixteenths(figure, 'in');
    const part = pick(64 * 16);
    const other = known.length > 0 ? known[pick(known.length)] : undefined;
    switch (pick(8)) {
        case 0: return `${writeSixteenths(figure + part, 'in')} - ${writeSixteenths(part, 'in')}`;
        case 1: return `(${text} * 3) / 3`;
        case 2: return `max(${text}, ${writeSixteenths(Math.max(0, figure - part), 'in')})`;
        case 3: return `if 2 > 1 and not(3 < 2) then ${text} else ${writeSixteenths(part, 'in')}`;
        case 4: return `round_down(${writeSixteenths(figure, 'in')} + 1/32", 1/16")`;
        case 5: return other && other.figure <= figure ? `${other.name} + ${writeSixteenths(figure - other.figure, 'in')}` : `sum(${text}, 0")`;
        case 6: return other ? `if ${other.name} = ${writeSixteenths(other.figure, 'in')} then ${text} else 0"` : `min(${text}, 1000")`;
        default: return `${String(figure / 16)} in`;
    }
}

const sorted = (items: Iterable<string>): readonly string[] => [...items].sort();
/** All that is computed and found, apart from places; names go in, figures come out. */
interface Outcome { readonly block: unknown; readonly parts: readonly string[]; readonly facts: readonly string[]; readonly findings: readonly string[] }
const outcome = (job: JobAnalysis): Outcome => ({
    block: canonicalBlock({ kind: 'job', values: job.job.block.values, children: job.job.block.children.filter(({ kind }) => kind !== 'parameter') }),
    parts: job.results.parts.map(asText), facts: job.facts.under().map(({ path, value }) => asText({ path, value })),
    findings: sorted(job.findings.map(({ rule, severity, message, subject }) => `${severity} ${rule} ${subject ?? ''}: ${message}`)),
});
const found = async (reader: JobReader, text: string, name: string): Promise<Outcome> => {
    const analysis = await reader.analyse(text);
    const job = analysis.jobs.find(one => one.job.block.name?.value === name);
    if (!job) throw new Error(`no job ${name} in\n${text}`);
    return outcome(job);
};
const wordAt = ({ header }: BlockText, at: number): string => { const word = header[at]; return typeof word === 'string' ? word : ''; };
const nameIn = (job: BlockText): string => wordAt(job, 1);
const withBody = (job: BlockText, body: BlockText['body']): BlockText => ({ header: job.header, body });
const plainText = (job: BlockText): string => writeFile(fileOf(job));
const letFact = (name: string, value: string): FactText => ({ key: 'let', value: [`${name} = ${value}`] });

/** Figures lifted into `let`s with calculations around them, in any order and at the top of the file or in the job, change nothing. */
export async function checkLets(numRuns: number, seed: number): Promise<void> {
    const reader = new JobReader();
    let lifted = 0;
    await fc.assert(fc.asyncProperty(randomJob, picks, async ({ job }, pick) => {
        const given: { name: string; figure: number }[] = [];
        const calculated = lift(job, pick, figure => { given.push({ name: `n${given.length}`, figure }); return `n${given.length - 1}`; });
        const lets = given.map(({ name, figure }, i) => letFact(name, calculation(figure, pick, given.slice(0, i))));
        const [inFile, inJob]: [FactText[], FactText[]] = [[], []];
        // What stands at the top of the file cannot see into a job, so the first ones may stand there.
        const cut = pick(lets.length + 1);
        lets.forEach((one, i) => { (i < cut ? inFile : inJob).push(one); });
        const body: (BlockText | FactText)[] = [...calculated.body];
        for (const one of inJob) body.splice(pick(body.length + 1), 0, one);
        const text = `${inFile.sort(() => pick(2) - 0.5).map(({ value }) => `let ${writeValue(value, 'in')}`).join('\n')}\n${writeFile(fileOf(withBody(calculated, body)))}`;
        lifted += given.length;
        const written = await found(reader, plainText(job), nameIn(job));
        expect(await found(reader, text, nameIn(job)), text).toEqual(written);
        // In any order of facts and files: what is computed is the same, though a list names things in the order written.
        const shuffled = writeFile({ uses: [...fileOf(job).uses].reverse(), jobs: [shuffleBlock(withBody(calculated, [...lets, ...calculated.body]), pick)] });
        const other = await found(reader, shuffled, nameIn(job));
        for (const kind of ['parts', 'facts'] as const) expect(sorted(other[kind]), shuffled).toEqual(sorted(written[kind]));
    }), { numRuns, seed });
    expect(lifted).toBeGreaterThan(numRuns);
}

/** A job made from a series with values, by place or by name, is the job written out. */
export async function checkSeries(numRuns: number, seed: number): Promise<void> {
    const reader = new JobReader();
    await fc.assert(fc.asyncProperty(randomJob, picks, async ({ job }, pick) => {
        const given: number[] = [];
        const open = lift(job, pick, figure => { given.push(figure); return `p${given.length - 1}`; });
        const parameters = given.map((figure, i): BlockText => ({ header: ['parameter', `p${i}`], body: [{ key: 'takes', value: ['length'] }, ...(i % 3 === 2 ? [{ key: 'otherwise', value: [{ sixteenths: figure }] }] : [])] }));
        // Those by place come first; one that has a default may be left out of what is given by name.
        const byPlace = pick(given.length + 1);
        const values = given.flatMap((figure, i) => i < byPlace ? [calculation(figure, pick, [])] : i % 3 === 2 && pick(2) === 0 ? [] : [`p${i} = (${calculation(figure, pick, [])})`]);
        const series = writeFile(fileOf({ header: ['series', 'line', '"Line"'], body: [...parameters, ...open.body] }));
        const text = `${series}\njob ${nameIn(job)} ${wordAt(job, 2)} is line(${values.join(', ')})\n`;
        expect(await found(reader, text, nameIn(job)), text).toEqual(await found(reader, plainText(job), nameIn(job)));
    }), { numRuns, seed });
}

/** Splits a job in two: what a lower text says and what an upper one says in its place. */
function split(job: BlockText, other: BlockText, pick: Pick): { readonly lower: BlockText; readonly upper: BlockText['body'] } {
    const upper: (BlockText | FactText)[] = [];
    const lower = job.body.map((item): BlockText | FactText => {
        if (!isBlockText(item)) return item;
        // The same block of another random job lends figures of the same kind, so that what is overridden is a job's too.
        const lender = other.body.find((one): one is BlockText => isBlockText(one) && one.header[0] === item.header[0] && one.header[1] === item.header[1]);
        const hasName = !['', 'on'].includes(wordAt(item, 1));
        const isAlone = job.body.filter(one => isBlockText(one) && one.header[0] === item.header[0]).length === 1;
        if (!lender || (!hasName && !(isAlone && ['site', 'room'].includes(wordAt(item, 0))))) return item;
        const moved: FactText[] = [];
        const body = item.body.map((fact): BlockText | FactText => {
            if (isBlockText(fact) || pick(3) !== 0) return fact;
            const lent = lender.body.find((one): one is FactText => !isBlockText(one) && one.key === fact.key);
            if (!lent) return fact;
            moved.push(fact);
            return lent;
        });
        if (moved.length > 0) upper.push({ header: hasName ? item.header.slice(0, 2) : item.header.slice(0, 1), body: moved });
        return { header: item.header, body };
    });
    return { lower: withBody(job, lower), upper };
}

/** A job that overrides facts of its series is the job written out; a variant that changes facts is the job with the changes written in. */
export async function checkOverrides(numRuns: number, seed: number): Promise<void> {
    const reader = new JobReader();
    let moved = 0;
    await fc.assert(fc.asyncProperty(randomJob, randomJob, picks, async ({ job }, { job: other }, pick) => {
        const { lower, upper } = split(job, other, pick);
        moved += upper.length;
        const written = await found(reader, plainText(job), nameIn(job));
        const series = `${writeFile(fileOf({ header: ['series', 'line', '"Line"'], body: lower.body }))}\n${writeFile({ uses: [], jobs: [{ header: [...job.header, 'is', 'line'], body: upper }] })}`;
        expect(await found(reader, series, nameIn(job)), series).toEqual(written);
        const varied = writeFile(fileOf({ header: lower.header, body: [...lower.body, { header: ['variant', 'other'], body: upper }] }));
        const variant = await found(reader, varied, `${nameIn(job)}-other`);
        // Its findings are those the job itself has not, and its block goes by a name of its own.
        expect(variant.parts, varied).toEqual(written.parts);
        expect(variant.facts, varied).toEqual(written.facts);
    }), { numRuns, seed });
    expect(moved).toBeGreaterThan(numRuns);
}
