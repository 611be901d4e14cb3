import type { Analysis, JobAnalysis } from '../analyze.js';
import { showList, spoken } from '../core/show.js';
import { spanContains, type Span } from '../core/span.js';
import { lookUp } from '../facts/look-up.js';
import type { Block, Given } from '../model/block.js';
import { HouseCondition } from '../model/house-condition.js';
import type { Names } from '../model/names.js';
import { factsPrefix } from './find-block.js';

/** A line above a job, a series or a house rule; `opens` tells what choosing it shows. */
export interface Lens { readonly at: Span; readonly title: string; readonly opens: 'cut-list' | 'nothing'; readonly job: string | undefined }

/** What stands in other texts. */
export interface Around {
    /** How many jobs are made from the series that starts at an offset of the file, in all files, directly or through other series. */
    readonly countJobs: (start: number) => number;
    /** Names of `let`s that are given between two offsets of the file and were given below: by a series, or by the job of a variant. */
    readonly letsSaidAgain: (start: number, end: number) => readonly string[];
}

const counted = (count: number, one: string): string => `${count} ${one}${count === 1 ? '' : 's'}`;
const note = (at: Span, title: string): Lens => ({ at, title, opens: 'nothing', job: undefined });

/**
 * Above each job: how many findings it has, by severity, how many parts and pieces its cut list will hold, and what it says otherwise than its series;
 * above each series how many jobs are made from it; above each house rule how many things of the file's jobs keep it.
 */
export function lensesOf(analysis: Analysis, around?: Around): readonly Lens[] {
    const ofSeries = around ? analysis.file.series.map(({ head, span }) => { const count = around.countJobs(span.start); return note(head, count === 0 ? 'no job is made from it' : `${counted(count, 'job')} ${count === 1 ? 'is' : 'are'} made from it`); }) : [];
    return [...analysis.jobs.flatMap(job => lensesOfJob(job, analysis, around)), ...ofSeries, ...analysis.file.rules.flatMap(rule => lensOfRule(rule, analysis) ?? [])];
}

function lensesOfJob(analysed: JobAnalysis, analysis: Analysis, around: Around | undefined): readonly Lens[] {
    const { job: { block }, results } = analysed;
    const own = analysis.findings.filter(({ at }) => at.uri === block.span.uri && block.span.start <= at.start && at.start < block.span.end);
    const shown = (['error', 'warning', 'info'] as const).flatMap(severity => {
        const count = own.filter(finding => finding.severity === severity).length;
        return count === 0 ? [] : [counted(count, severity)];
    });
    const pieces = results.parts.reduce((total, part) => total + part.count, 0);
    const name = block.name?.value;
    const otherwise = saidOtherwise(analysed, around);
    return [
        { at: block.head, title: shown.length > 0 ? shown.join(', ') : 'no findings', opens: 'nothing', job: name },
        ...(pieces > 0 ? [{ at: block.head, title: `cut list: ${counted(results.parts.length, 'part')}, ${counted(pieces, 'piece')}`, opens: 'cut-list', job: name } as const] : []),
        ...(otherwise === undefined ? [] : [note(block.head, otherwise)]),
    ];
}

/** More facts than this are counted, not named. */
const mostNamed = 4;
/** What a job says otherwise than its series, or a variant than its job. */
function saidOtherwise({ job }: JobAnalysis, around: Around | undefined): string | undefined {
    const { base } = job.block;
    if (!base && job.variant === undefined) return undefined;
    const found = [...around?.letsSaidAgain(job.block.span.start, job.block.span.end) ?? []];
    const gather = (block: Block, path: string): void => {
        for (const [key, given] of Object.entries<Given<unknown>>(block.values)) {
            if ((given.wonOver?.length ?? 0) > 0 && spanContains(job.block.span, given.fact)) found.push(path === '' ? key : `${path}.${key}`);
        }
        for (const child of block.children) gather(child, [path, factsPrefix(child, block) ?? ''].filter(Boolean).join('.'));
    };
    gather(job.block, '');
    const from = job.variant === undefined ? base?.value ?? '' : 'its job';
    if (found.length === 0) return job.variant === undefined ? `${from}, with nothing said otherwise` : undefined;
    const named = found.slice(0, mostNamed);
    return `otherwise than ${from}: ${found.length > named.length ? `${named.join(', ')} and ${found.length - named.length} more` : showList(named)}`;
}

/** How many of the things a house rule is about keep it, among the jobs of the file it stands in. */
function lensOfRule({ head, values: { each, when, require }, isWhole }: Block<'rule'>, { jobs }: Analysis): Lens | undefined {
    if (!isWhole || !(require?.value instanceof HouseCondition)) return undefined;
    const condition = require.value;
    let [asked, kept] = [0, 0];
    for (const { job, facts } of jobs) {
        if (job.variant) continue;
        for (const thing of each ? job.block.children.filter(({ kind }) => kind === each.value) : [undefined]) {
            const names: Names = { find: path => lookUp(job, facts, path, thing) };
            if (when?.value instanceof HouseCondition && when.value.judge(names).holds !== true) continue;
            const { holds } = condition.judge(names);
            if (holds === undefined) continue;
            asked++;
            if (holds) kept++;
        }
    }
    const what = each ? spoken(each.value) : 'job';
    const many = what.endsWith('h') ? `${what}es` : `${what}s`;
    return asked === 0 ? undefined : note(head, `holds for ${kept} of ${asked} ${asked === 1 ? what : many}${each ? ' in' : ' of'} this file${each ? '’s jobs' : ''}`);
}
