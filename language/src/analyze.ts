import type { LangiumDocument } from 'langium';
import type { ReportedFinding } from './core/finding.js';
import { reported, type AnalyzeOptions, type JobAnalysis } from './analysis/analyze-job.js';
import { JudgedJob } from './analysis/judged-job.js';
import { KeptJobs } from './analysis/kept-jobs.js';
import { forgetLowered, lowerFile, type LoweredFile } from './model/file.js';
import type { HotroomFile } from './model/job.js';
import { isLanguageRule } from './model/language-rules.js';
import { checkHouseRule } from './rules/house-rules.js';
import { applySeverities } from './settings/apply-severities.js';
import type { HotroomServices } from './syntax/module.js';

export type { AnalyzeOptions, JobAnalysis } from './analysis/analyze-job.js';

/** One file, analysed. `findings` holds those of the text and of every job, in the order of the text. */
export interface Analysis {
    readonly file: HotroomFile;
    readonly jobs: readonly JobAnalysis[];
    readonly findings: readonly ReportedFinding[];
    /** What the settings of the project turned off. */
    readonly leftOut: readonly ReportedFinding[];
}

const kept = new WeakMap<LoweredFile, { readonly analysis: Analysis; readonly under: string }>();
const keptJobs = new WeakMap<HotroomServices, KeptJobs>();

/**
 * The one door to everything: server, command line and tests call this and compute nothing themselves. Synchronous; kept for as long as the
 * document and all it uses stay as they are; jobs of the file whose text and surroundings stay keep their findings beyond that. Holds no stock plan:
 * that is asked for, off the keystroke.
 */
export function analyze(document: LangiumDocument, services: HotroomServices, options: AnalyzeOptions = {}): Analysis {
    const lowered = lowerFile(document, services);
    const { settings } = options;
    const under = JSON.stringify([options.today, settings?.key]);
    const known = options.rules ? undefined : kept.get(lowered);
    if (known?.under === under) return known.analysis;
    let memory = keptJobs.get(services);
    if (!memory) keptJobs.set(services, memory = new KeptJobs(services));
    const jobs = memory.analyze(document, lowered, options).map((job): JobAnalysis => settings ? new JudgedJob(job, settings) : job);
    const ofRules = lowered.file.rules.flatMap(checkHouseRule);
    const ofText = [...lowered.findings.map(reported), ...ofRules];
    const judged = settings ? applySeverities(ofText, settings) : { findings: ofText, leftOut: [] };
    const findings = unknownNamesTogether([...judged.findings, ...jobs.flatMap(job => job.findings)].filter(notToldYet()))
        .sort((a, b) => a.at.start - b.at.start || a.at.end - b.at.end || (a.rule < b.rule ? -1 : a.rule > b.rule ? 1 : 0));
    const analysis: Analysis = { file: { ...lowered.file, get jobs() { return jobs.map(({ job }) => job); } }, jobs, findings, leftOut: [...judged.leftOut, ...jobs.flatMap(job => job.leftOut ?? [])] };
    if (!options.rules) kept.set(lowered, { analysis, under });
    return analysis;
}

/** Drops what is kept of a document whose own text or used files have changed. */
export const forget = (document: LangiumDocument): void => { forgetLowered(document); };

/** Drops everything remembered of a document that nobody looks at any more. Its findings were reported; it is analysed anew when it is asked for. */
export function release(document: LangiumDocument, services: HotroomServices): void {
    forgetLowered(document);
    keptJobs.get(services)?.release(document);
}

/** A mistake in a text that several jobs share, a series or a house rule, is one mistake: the first job that meets it tells it. */
function notToldYet(): (finding: ReportedFinding) => boolean {
    const told = new Set<string>();
    return ({ rule, at, origin = at, message }) => {
        if (!isLanguageRule(rule)) return true;
        const key = [rule, origin.uri, origin.start, origin.end, message].join('\0');
        const isNew = !told.has(key);
        told.add(key);
        return isNew;
    };
}

/** A name that several jobs of a file misspell alike is one mistake, told at the first. */
function unknownNamesTogether(findings: readonly ReportedFinding[]): ReportedFinding[] {
    const first = new Map<string, ReportedFinding>();
    const kept: ReportedFinding[] = [];
    for (const finding of findings) {
        const same = finding.rule === 'unknown-name' || finding.rule === 'name-in-calculation' ? first.get(finding.message) : undefined;
        if (!same) {
            if (finding.rule === 'unknown-name' || finding.rule === 'name-in-calculation') first.set(finding.message, finding);
            kept.push(finding);
            continue;
        }
        const merged: ReportedFinding = {
            ...same, related: [...same.related ?? [], { at: finding.at, message: 'It is used here too.' }, ...finding.related ?? []],
            ...(same.fixes && { fixes: same.fixes.map((fix, i) => ({ ...fix, edits: [...fix.edits, ...finding.fixes?.[i]?.edits ?? []] })) }),
        };
        kept[kept.indexOf(same)] = merged;
        first.set(finding.message, merged);
    }
    return kept;
}
