import type { LangiumDocument } from 'langium';
import type { Finding, ReportedFinding } from './core/finding.js';
import { spanContains, type Span } from './core/span.js';
import { showWritable } from './core/show.js';
import { areRulesKnown } from './assembly/known.js';
import type { Results } from './assembly/results.js';
import type { FactsTree } from './facts/facts-tree.js';
import { settle } from './facts/settle.js';
import type { Block } from './model/block.js';
import { forgetLowered, lowerFile, type LoweredFile } from './model/file.js';
import type { HotroomFile, Job } from './model/job.js';
import type { JobSource } from './model/job-source.js';
import { languageRules } from './model/language-rules.js';
import type { LanguageFinding } from './model/reading.js';
import type { RuleSet } from './rule-sets/index.js';
import { applyWaivers } from './rules/apply-waivers.js';
import { checkHouseRule, judgeHouseRules } from './rules/house-rules.js';
import { allRules } from './rules/index.js';
import { findingsOfVariant, relocate } from './rules/relocate.js';
import type { Rule, RuleInput } from './rules/rule.js';
import type { CalendarDate } from './vocabulary/values.js';
import type { HotroomServices } from './syntax/module.js';

/** One job, everything computed for it, and what is wrong with it. */
export interface JobAnalysis {
    readonly job: Job;
    readonly results: Results;
    readonly facts: FactsTree;
    readonly ruleSets: readonly RuleSet[];
    readonly findings: readonly ReportedFinding[];
}

/** One file, analysed. `findings` holds those of the text and of every job, in the order of the text. */
export interface Analysis {
    readonly file: HotroomFile;
    readonly jobs: readonly JobAnalysis[];
    readonly findings: readonly ReportedFinding[];
}

export interface AnalyzeOptions {
    /** Called between rules; throws to give up. */
    readonly checkCancelled?: () => void;
    /** Rules to run instead of all; for tests. */
    readonly rules?: readonly Rule[];
    /** The day that counts for waivers with an end. The language has no clock: whoever opens the door says what day it is. */
    readonly today?: CalendarDate;
    /** Whether a rule that throws makes one finding (the editor) or throws on (tests). */
    readonly onDefect?: 'report' | 'throw';
}

const kept = new WeakMap<LoweredFile, { readonly analysis: Analysis; readonly today: string }>();

/**
 * The one door to everything: server, command line and tests call this and compute nothing themselves. Synchronous; kept for as long as the
 * document and all it uses stay as they are. Holds no stock plan: that is asked for, off the keystroke.
 */
export function analyze(document: LangiumDocument, services: HotroomServices, options: AnalyzeOptions = {}): Analysis {
    const lowered = lowerFile(document, services);
    const today = options.today ? Object.values(options.today).join('-') : '';
    const known = options.rules ? undefined : kept.get(lowered);
    if (known?.today === today) return known.analysis;
    const houseRules = lowered.rules();
    const jobs: JobAnalysis[] = [];
    let last: readonly ReportedFinding[] = [];
    for (const source of lowered.jobs) {
        const analysed = analyzeJob(source, houseRules, options);
        if (source.variant) jobs.push({ ...analysed, findings: findingsOfVariant(analysed.findings, last, analysed.job.variant?.name ?? '', analysed.job.block.span) });
        else {
            last = analysed.findings;
            jobs.push(analysed);
        }
    }
    const ofRules = lowered.file.rules.flatMap(checkHouseRule);
    const findings = unknownNamesTogether([...lowered.findings.map(reported), ...ofRules, ...jobs.flatMap(job => job.findings)])
        .filter((finding, i, all) => !ofRules.some(other => other !== finding && all.indexOf(other) < i && other.rule === finding.rule && other.at.start === finding.at.start && other.message === finding.message))
        .sort((a, b) => a.at.start - b.at.start || a.at.end - b.at.end || (a.rule < b.rule ? -1 : a.rule > b.rule ? 1 : 0));
    const analysis: Analysis = { file: { ...lowered.file, jobs: jobs.map(({ job }) => job) }, jobs, findings };
    if (!options.rules) kept.set(lowered, { analysis, today });
    return analysis;
}

/** Drops what is kept of a document whose own text or used files have changed. */
export const forget = (document: LangiumDocument): void => { forgetLowered(document); };

const reported = (finding: LanguageFinding): ReportedFinding => ({ ...finding, severity: finding.severity ?? languageRules[finding.rule].severity });

function analyzeJob(source: JobSource, houseRules: readonly Block<'rule'>[], { checkCancelled, rules = allRules, today, onDefect = 'report' }: AnalyzeOptions): JobAnalysis {
    const { job, results, facts, ruleSets, findings: language } = settle(source, checkCancelled);
    const input: RuleInput = {
        job, results,
        get ruleSets() { if (!areRulesKnown(job)) throw new NotReadable(); return ruleSets; },
        show: length => showWritable(length, job.unit),
    };
    const broken = job.block.children.filter(block => !block.isWhole);
    const computed = [...rules.flatMap(rule => {
        checkCancelled?.();
        return runRule(rule, input, onDefect);
    }), ...judgeHouseRules(houseRules, job, facts)]
        // What stands in a block that could not be read whole is judged when it can be: a default may stand where the broken line says otherwise.
        .filter(({ at }) => !broken.some(({ span }) => spanContains(span, at)));
    const isComplete = job.isWhole && rules === allRules && !language.some(finding => reported(finding).severity === 'error');
    const waived = applyWaivers({ job, findings: computed, rules: allRules, houseRules, ruleSets, today, isComplete });
    return { job, results, facts, ruleSets, findings: [...oneForEachPlace(language).map(reported), ...relocate(waived, job, ownSpan(job, source))] };
}

/** The text that is the job's own: a variant reaches into the job it is of. */
const ownSpan = ({ block }: Job, { variant, fact }: JobSource): Span => variant ? { ...block.span, start: fact.$cstNode?.offset ?? block.span.start, end: fact.$cstNode?.end ?? block.span.end } : block.span;

/** Two findings about the language at one place have one cause; the first stays. */
function oneForEachPlace(findings: readonly LanguageFinding[]): readonly LanguageFinding[] {
    return findings.filter((finding, i) => !findings.slice(0, i).some(other => other.at.start === finding.at.start && other.at.end === finding.at.end && other.at.uri === finding.at.uri));
}

/** A name that several jobs of a file misspell alike is one mistake, told at the first. */
function unknownNamesTogether(findings: readonly ReportedFinding[]): ReportedFinding[] {
    const first = new Map<string, ReportedFinding>();
    const kept: ReportedFinding[] = [];
    for (const finding of findings) {
        const same = finding.rule === 'unknown-name' ? first.get(finding.message) : undefined;
        if (!same) {
            if (finding.rule === 'unknown-name') first.set(finding.message, finding);
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

/** Thrown to a rule that asks for what the job says and could not be read: it has nothing to say then. */
class NotReadable extends Error {}

/** One rule that fails is one finding; the others go on. */
function runRule(rule: Rule, input: RuleInput, onDefect: 'report' | 'throw'): ReportedFinding[] {
    const report = (finding: Finding): ReportedFinding => ({ ...finding, rule: rule.id, severity: finding.severity ?? rule.severity });
    try {
        return [...rule.check(input)].map(report);
    } catch (error) {
        if (error instanceof NotReadable) return [];
        if (onDefect === 'throw') throw error;
        return [report({
            at: input.job.block.head, severity: 'warning',
            message: `The rule ${rule.id} failed on this job and was left out: ${error instanceof Error ? error.message : String(error)}. Please report this with the job.`,
        })];
    }
}
