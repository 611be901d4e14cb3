import { nearestName } from '../core/nearest.js';
import type { ReportedFinding } from '../core/finding.js';
import { spanContains } from '../core/span.js';
import type { Block } from '../model/block.js';
import type { Job } from '../model/job.js';
import { isLanguageRule, languageRules } from '../model/language-rules.js';
import type { LanguageFinding } from '../model/reading.js';
import type { Waiver } from '../model/waivers.js';
import type { RuleSet } from '../rule-sets/index.js';
import { showDate, type CalendarDate } from '../vocabulary/values.js';
import type { Rule } from './rule.js';

export interface WaiverInput {
    readonly job: Job;
    readonly findings: readonly ReportedFinding[];
    readonly rules: readonly Rule[];
    readonly houseRules: readonly Block<'rule'>[];
    readonly ruleSets: readonly RuleSet[];
    /** The day that counts for waivers with an end; without it none has expired. */
    readonly today: CalendarDate | undefined;
    /** Whether all findings there can be are here: only then can a waiver be called unneeded. */
    readonly isComplete: boolean;
}

/**
 * Puts the waivers of a job on the findings they accept. An accepted finding stays, as an info with who accepted it; a waiver of what cannot be waived,
 * one that has run out and one that nothing answers to are findings of their own.
 */
export function applyWaivers(input: WaiverInput): readonly ReportedFinding[] {
    if (input.job.waivers.length === 0) return input.findings;
    const found: ReportedFinding[] = [];
    const report = (rule: LanguageFinding['rule'], finding: Pick<ReportedFinding, 'at' | 'message' | 'fixes' | 'related'>): void => { found.push({ ...finding, rule, severity: languageRules[rule].severity }); };
    const accepted = new Map<ReportedFinding, Waiver>();
    for (const waiver of input.job.waivers) {
        const { rule, subject, until } = waiver;
        const matching = input.findings.filter(finding => answersTo(finding, waiver, input.job));
        const known = input.rules.find(({ id }) => id === rule.value);
        const isHouse = input.houseRules.some(({ name }) => name?.value === rule.value);
        const refusal = isLanguageRule(rule.value) ? 'It is a mistake of the text: mend it.'
            : known?.isWaivable === false ? `“${known.title}” can never be waived. Mend the job, or ask the heater's maker or the local authority.`
            : matching.some(finding => finding.isWaivable === false || isNeverWaived(finding, input.ruleSets)) ? 'The rule set it comes from lets nobody waive it. Mend the job.'
            : undefined;
        if (refusal !== undefined) report('waiver-not-allowed', { at: rule.span, message: `${rule.value} cannot be waived. ${refusal}` });
        else if (!known && !isHouse) {
            const nearest = nearestName(rule.value, [...input.rules.map(({ id }) => id), ...input.houseRules.flatMap(({ name }) => name?.value ?? [])]);
            report('waiver-of-unknown-finding', {
                at: rule.span, message: `There is no finding ${rule.value}. ${nearest ? `Is ${nearest} meant?` : 'Copy its name from the finding.'}`,
                ...(nearest && { fixes: [{ title: `Write ${nearest}`, safety: 'safe' as const, edits: [{ span: rule.span, newText: nearest }] }] }),
            });
        } else if (isOver(until.value, input.today)) {
            report('waiver-expired', { at: until.span, message: `This waiver ran out on ${showDate(until.value)}. Look at ${rule.value} again: mend it, or have ${waiver.by} accept it anew.`, ...(matching[0] && { related: [{ at: matching[0].at, message: 'It is about this.' }] }) });
        } else if (matching.length > 0) for (const finding of matching) accepted.set(finding, waiver);
        else if (input.isComplete) {
            const names = input.job.block.children.map(block => block.name?.value ?? block.kind);
            const meant = subject && !names.includes(subject.value) ? nearestName(subject.value, names) : undefined;
            if (subject && meant !== undefined) report('waiver-not-needed', {
                at: subject.span, message: `There is no ${subject.value} in this job to waive ${rule.value} on. Is ${meant} meant?`,
                fixes: [{ title: `Write ${meant}`, safety: 'safe', edits: [{ span: subject.span, newText: meant }] }],
            });
            else report('waiver-not-needed', {
                at: rule.span, message: `Nothing answers to this waiver: there is no ${rule.value}${subject ? ` on ${subject.value}` : ''}. Remove it.`,
                fixes: [{ title: 'Remove the waiver', safety: 'safe', edits: [{ span: waiver.span, newText: '' }] }],
            });
        }
    }
    return [...input.findings.map(finding => {
        const waiver = accepted.get(finding);
        return waiver ? withWaiver(finding, waiver) : finding;
    }), ...found];
}

function withWaiver(finding: ReportedFinding, { because, by, until, span }: Waiver): ReportedFinding {
    const day = showDate(until.value);
    return {
        ...finding, severity: 'info', fixes: [], waived: { because, by, until: day, at: span },
        message: `${finding.message} Accepted by ${by} until ${day}: ${because}.`,
        related: [...finding.related ?? [], { at: span, message: 'It is waived here.' }],
    };
}

function answersTo(finding: ReportedFinding, { rule, subject }: Waiver, job: Job): boolean {
    if (finding.rule !== rule.value) return false;
    if (!subject) return true;
    const { value } = subject;
    if (finding.subject !== undefined && (finding.subject === value || finding.subject.startsWith(`${value}.`))) return true;
    return job.block.children.some(block => (block.name?.value ?? block.kind) === value && spanContains(block.span, finding.at));
}

/** Whether the clause a finding cites is one its rule set lets nobody waive. */
export const isNeverWaived = ({ citation }: ReportedFinding, ruleSets: readonly RuleSet[]): boolean => citation?.kind === 'standard'
    && ruleSets.some(({ clauses }) => clauses.some(({ isNeverWaived: never, citation: own }) => never === true && own.kind === 'standard' && own.document === citation.document && own.clause === citation.clause && own.text === citation.text));

const inOrder = ({ year, month, day }: CalendarDate): number => (year * 100 + month) * 100 + day;
const isOver = (until: CalendarDate, today: CalendarDate | undefined): boolean => today !== undefined && inOrder(until) < inOrder(today);
