import type { JobAnalysis } from '../../language/src/analyze.js';
import type { Figure } from '../../language/src/core/finding.js';
import { showLength, showNumber, type LengthUnit } from '../../language/src/core/show.js';
import type { Part } from '../../language/src/engines/parts/part.js';
import { showEnds, showNotches } from '../../language/src/renderings/cut-list.js';
import { showGoesTo } from '../../language/src/renderings/part-place.js';
import { showCut, showSection } from '../../language/src/renderings/show-figures.js';

/** Most jobs of one file that are listed one after the other. */
const mostInFull = 4;

/**
 * Everything computed for the jobs of a file as lines of text: the facts by path, then the parts. A few jobs are listed one after the other, their
 * parts in the order of the job. A file of many jobs made from one series repeats itself from job to job; there every line is said once, with the
 * numbers of the jobs it holds for, so that nothing is left out and a diff shows which jobs changed.
 */
export function listJobs(jobs: readonly JobAnalysis[]): string {
    if (jobs.length <= mostInFull) return jobs.map(listFacts).join('\n');
    return [...jobs.map(({ job }, i) => `${i + 1} ${job.block.name?.value ?? ''}`), '', ...together(jobs.map(factLines)), '', partHead, ...together(jobs.map(partLines)), ''].join('\n');
}

/** Figures are rounded only as a user sees them. */
const listFacts = (one: JobAnalysis): string => [`job ${one.job.block.name?.value ?? ''}`, '', ...factLines(one).sort(byText), '', partHead, ...partLines(one), ''].join('\n');
const partHead = 'parts: mark | what | count | stock | section | length | ends | cut | goes to';
const factLines = ({ job, facts }: JobAnalysis): string[] => facts.under().map(({ path, value, how }) => `${path} = ${showFigure(value, job.unit)}${how === undefined ? '' : ` (${how})`}`);
const partLines = ({ job, results }: JobAnalysis): string[] => results.parts.map(part => listPart(part, job.unit));

/** Each different line once, behind the numbers of the jobs that have it; a line a job has twice is told apart. */
function together(lists: readonly (readonly string[])[]): readonly string[] {
    const holders = new Map<string, number[]>();
    for (const [i, lines] of lists.entries()) {
        const seen = new Map<string, number>();
        for (const line of lines) {
            const times = (seen.get(line) ?? 0) + 1;
            seen.set(line, times);
            const key = times === 1 ? line : `${line} (${times})`;
            holders.set(key, [...holders.get(key) ?? [], i + 1]);
        }
    }
    return [...holders].sort(([a], [b]) => byText(a, b)).map(([line, jobs]) => `${jobs.length === lists.length ? 'all' : ranges(jobs)}: ${line}`);
}

/** `1-3, 7` for 1, 2, 3, 7. */
function ranges(numbers: readonly number[]): string {
    const found: [number, number][] = [];
    for (const number of numbers) {
        const last = found.at(-1);
        if (last?.[1] === number - 1) last[1] = number; else found.push([number, number]);
    }
    return found.map(([from, to]) => from === to ? String(from) : `${from}-${to}`).join(', ');
}

const byText = (a: string, b: string): number => a < b ? -1 : a > b ? 1 : 0;

function showFigure(figure: Figure, unit: LengthUnit): string {
    switch (figure.kind) {
        case 'length': return showLength(figure.length, unit);
        case 'amount': return `${showNumber(figure.value, 3)} ${figure.unit}`.trimEnd();
        case 'words': return figure.words;
    }
}

function listPart(part: Part, unit: LengthUnit): string {
    const { mark, what, count, material, section, length, allowance, ends, cut, notches, measure } = part;
    return [
        mark, what, String(count), material.stock ?? 'no stock', showSection(section, unit), showCut(length, unit), showEnds(ends), cut, showGoesTo(part, unit),
        ...(allowance === undefined ? [] : [`allowance: ${showCut(allowance, unit)}`]),
        ...(notches.length > 0 ? [`notches: ${showNotches(part, unit)}`] : []), ...(measure === undefined ? [] : [`measure: ${measure}`]),
    ].join(' | ');
}
