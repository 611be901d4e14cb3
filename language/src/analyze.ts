import type { LangiumDocument } from 'langium';
import type { Finding, ReportedFinding } from './core/finding.js';
import { spanContains } from './core/span.js';
import { showWritable } from './core/show.js';
import { assemble } from './assembly/assemble.js';
import { areRulesKnown } from './assembly/known.js';
import type { Results } from './assembly/results.js';
import { publishFacts } from './facts/publish.js';
import { FactsTree } from './facts/facts-tree.js';
import { forgetLowered, lowerFile } from './model/file.js';
import type { HotroomFile, Job } from './model/job.js';
import { languageRules } from './model/language-rules.js';
import { findRuleSet, type RuleSet } from './rule-sets/index.js';
import { allRules } from './rules/index.js';
import type { Rule, RuleInput } from './rules/rule.js';
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
    /** Whether a rule that throws makes one finding (the editor) or throws on (tests). */
    readonly onDefect?: 'report' | 'throw';
}

const kept = new WeakMap<HotroomFile, Analysis>();

/**
 * The one door to everything: server, command line and tests call this and compute nothing themselves. Synchronous; kept for as long as the
 * document and all it uses stay as they are. Holds no stock plan: that is asked for, off the keystroke.
 */
export function analyze(document: LangiumDocument, services: HotroomServices, options: AnalyzeOptions = {}): Analysis {
    const { file, findings: languageFindings } = lowerFile(document, services);
    const known = options.rules ? undefined : kept.get(file);
    if (known) return known;
    const jobs = file.jobs.map(job => analyzeJob(job, options));
    const findings = [
        ...languageFindings.map(finding => ({ ...finding, severity: finding.severity ?? languageRules[finding.rule].severity })),
        ...jobs.flatMap(job => job.findings),
    ].sort((a, b) => a.at.start - b.at.start || a.at.end - b.at.end || (a.rule < b.rule ? -1 : a.rule > b.rule ? 1 : 0));
    const analysis: Analysis = { file, jobs, findings };
    if (!options.rules) kept.set(file, analysis);
    return analysis;
}

/** Drops what is kept of a document whose own text or used files have changed. */
export const forget = (document: LangiumDocument): void => { forgetLowered(document); };

function analyzeJob(job: Job, { checkCancelled, rules = allRules, onDefect = 'report' }: AnalyzeOptions): JobAnalysis {
    const ruleSets = (job.block.values.rules?.value ?? []).flatMap(id => findRuleSet(id) ?? []);
    const results = assemble(job, ruleSets);
    const facts = new FactsTree(publishFacts(job, results));
    const input: RuleInput = {
        job, results,
        get ruleSets() { if (!areRulesKnown(job)) throw new NotReadable(); return ruleSets; },
        show: length => showWritable(length, job.unit),
    };
    const broken = job.block.children.filter(block => !block.isWhole);
    const findings = rules.flatMap(rule => {
        checkCancelled?.();
        return runRule(rule, input, onDefect);
    // What stands in a block that could not be read whole is judged when it can be: a default may stand where the broken line says otherwise.
    }).filter(({ at }) => !broken.some(({ span }) => spanContains(span, at)));
    return { job, results, facts, ruleSets, findings };
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
