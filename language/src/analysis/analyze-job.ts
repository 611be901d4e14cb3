import type { Finding, ReportedFinding } from '../core/finding.js';
import { showList, showWritable } from '../core/show.js';
import { spanContains, type Span } from '../core/span.js';
import { assemble } from '../assembly/assemble.js';
import { areRulesKnown } from '../assembly/known.js';
import type { Results } from '../assembly/results.js';
import type { FactsTree } from '../facts/facts-tree.js';
import { settle } from '../facts/settle.js';
import { hasLooseLink, type Block } from '../model/block.js';
import type { Job } from '../model/job.js';
import type { JobDefaults } from '../model/job-defaults.js';
import type { JobSource } from '../model/job-source.js';
import { languageRules } from '../model/language-rules.js';
import type { Names } from '../model/names.js';
import type { LanguageFinding } from '../model/reading.js';
import type { RuleSet } from '../rule-sets/index.js';
import { applyWaivers } from '../rules/apply-waivers.js';
import { judgeHouseRules } from '../rules/house-rules.js';
import { allRules } from '../rules/index.js';
import { relocate } from '../rules/relocate.js';
import type { Rule, RuleInput } from '../rules/rule.js';
import type { ProjectSettings } from '../settings/settings.js';
import type { CalendarDate } from '../vocabulary/values.js';

/** One job, everything computed for it, and what is wrong with it. */
export interface JobAnalysis {
    readonly job: Job;
    readonly results: Results;
    readonly facts: FactsTree;
    readonly ruleSets: readonly RuleSet[];
    /** What the job's own text can see: its `let`s, the values of its series, and everything given and computed. */
    readonly names: Names;
    readonly findings: readonly ReportedFinding[];
    /** The settings of its project, when there are some. */
    readonly settings?: ProjectSettings;
    /** What those turned off. */
    readonly leftOut?: readonly ReportedFinding[];
}

export interface AnalyzeOptions {
    /** Called between rules; throws to give up. */
    readonly checkCancelled?: () => void;
    /** Rules to run instead of all; for tests. */
    readonly rules?: readonly Rule[];
    /** The day that counts for waivers with an end. The language has no clock: whoever opens the door says what day it is. */
    readonly today?: CalendarDate;
    /** What the project says for the jobs of this file. */
    readonly settings?: ProjectSettings;
    /** Whether a rule that throws makes one finding (the editor) or throws on (tests). */
    readonly onDefect?: 'report' | 'throw';
}

export const reported = (finding: LanguageFinding): ReportedFinding => ({ ...finding, severity: finding.severity ?? languageRules[finding.rule].severity });

/** Lowers, computes and judges one job or variant. */
export function analyzeJob(source: JobSource, houseRules: readonly Block<'rule'>[], { checkCancelled, rules = allRules, today, settings, onDefect = 'report' }: AnalyzeOptions): JobAnalysis {
    const { job, results, facts, ruleSets, names, findings: language } = settle(settings ? source.withDefaults(defaultsOf(settings)) : source, checkCancelled);
    const input = inputOf(job, results, ruleSets);
    const isRead = job.isWhole && !language.some(finding => reported(finding).severity === 'error');
    const broken = job.block.children.filter(block => !block.isWhole);
    const published = rules.flatMap(rule => {
        checkCancelled?.();
        return runRule(rule, input, onDefect);
    });
    const isSound = !published.some(({ severity }) => severity === 'error');
    const computed = [...published, ...judgeHouseRules(houseRules, job, facts, { isKnown: isRead && !hasLooseLink(job.block), isSound })]
        // What stands in a block that could not be read whole is judged when it can be: a default may stand where the broken line says otherwise.
        .filter(({ at }) => !broken.some(({ span }) => spanContains(span, at)));
    const isComplete = isRead && rules === allRules;
    const waived = applyWaivers({ job, findings: withSourceOfRules(computed, job, settings), rules: allRules, houseRules, ruleSets, today, isComplete });
    return { job, results, facts, ruleSets, names, findings: relocate([...oneForEachPlace(language).map(reported), ...waived], job, ownSpan(job, source)) };
}

/** What rules read of a job. Its rule sets are asked for when a rule needs them: a line of them that could not be read silences just those rules. */
function inputOf(job: Job, results: Results, ruleSets: readonly RuleSet[]): RuleInput {
    return {
        job, results,
        get ruleSets() { if (!areRulesKnown(job)) throw new NotReadable(); return ruleSets; },
        show: length => showWritable(length, job.unit),
        whatIf: changed => inputOf(changed, assemble(changed, []), ruleSets),
    };
}

/** The text that is the job's own: a variant reaches into the job it is of. */
const ownSpan = ({ block }: Job, { variant, fact }: JobSource): Span => variant ? { ...block.span, start: fact.$cstNode?.offset ?? block.span.start, end: fact.$cstNode?.end ?? block.span.end } : block.span;

/** Two findings about the language at one place have one cause; the first stays. */
function oneForEachPlace(findings: readonly LanguageFinding[]): readonly LanguageFinding[] {
    return findings.filter((finding, i) => !findings.slice(0, i).some(other => other.at.start === finding.at.start && other.at.end === finding.at.end && other.at.uri === finding.at.uri));
}

const defaultsOf = ({ rules, units }: ProjectSettings): JobDefaults => ({ ...(rules && { rules: rules.value }), ...(units && { units: units.value }) });

/** Whoever reads that a document demands something and finds no rule set in the job is led to the settings that name it. */
function withSourceOfRules(findings: readonly ReportedFinding[], job: Job, settings: ProjectSettings | undefined): readonly ReportedFinding[] {
    const rules = settings?.rules;
    if (!rules || job.block.written.has('rules') || !job.block.values.rules) return findings;
    const note = { at: rules.span, message: `The job names no rule set; the settings name ${showList(rules.value)} for it.` };
    return findings.map(finding => finding.citation?.kind === 'standard' || finding.at === job.block.values.rules?.span ? { ...finding, related: [...finding.related ?? [], note] } : finding);
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
