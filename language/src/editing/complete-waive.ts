import type { ReportedFinding } from '../core/finding.js';
import { allRules } from '../rules/index.js';
import { isNeverWaived } from '../rules/apply-waivers.js';
import { endOf } from '../syntax/token-list.js';
import { definitionOf } from '../vocabulary/index.js';
import { headsInSight } from './names-in-sight.js';
import type { Offer, SeenJob, Sight } from './offer.js';
import { isWordToken, type RawText } from './raw-facts.js';
import type { Spot } from './spot.js';

const clauses = [
    { word: 'on', text: '', detail: 'the block it is about', doc: 'Without it, every finding of the rule is accepted.' },
    { word: 'because', text: 'because "${1:reason}"', detail: 'the reason', doc: 'Printed with the finding.' },
    { word: 'by', text: 'by "${1:who}"', detail: 'who decided it', doc: 'Printed with the finding.' },
    { word: 'until', text: 'until ${1:2027-01-31}', detail: 'the last day it holds', doc: 'A date, such as 2027-03-01. Behind that day the finding stands again.' },
] as const;

/** Findings of a job that may be accepted and are not yet. */
export function openFindings(job: SeenJob | undefined): readonly ReportedFinding[] {
    if (!job) return [];
    const { findings, ruleSets } = job.analysis;
    return findings.filter(finding => !finding.waived && finding.isWaivable !== false && !isNeverWaived(finding, ruleSets) && (allRules.find(({ id }) => id === finding.rule)?.isWaivable ?? finding.citation?.kind === 'house'));
}

/** What goes on a `waive` line: the finding, the block it is about, why, by whom and until when. */
export function completeWaive(raw: RawText, { fact, before, after, current }: Extract<Spot, { kind: 'waive' }>, offset: number, sight: Sight): Offer[] {
    const at = { start: current?.startOffset ?? offset, end: current ? endOf(current) : offset };
    const job = sight.job?.(offset);
    const last = before.at(-1);
    const [rule] = before;
    const [next] = after;
    const isClause = (image: string | undefined): boolean => clauses.some(({ word }) => word === image);
    if (!rule) return next && !isClause(next.image) ? [] : ruleOffers(at, job, sight);
    if (last?.image === 'on' && before.length % 2 === 0) {
        if (next && !isClause(next.image)) return [];
        const blamed = new Set(openFindings(job).flatMap(({ rule: id, subject }) => id === rule.image && subject !== undefined ? [subject.split('.')[0] ?? ''] : []));
        return headsInSight(raw, fact.scope, offset, sight).filter(({ isKind, kind }) => !isKind || !definitionOf(kind as Parameters<typeof definitionOf>[0]).isRepeatable).map(({ name, doc, kind }): Offer => ({
            ...at, label: name, kind: 'name', text: name, isSnippet: false, order: blamed.has(name) ? 0 : 1, detail: blamed.has(name) ? `has ${rule.image}` : kind, doc,
        })).sort((a, b) => a.order - b.order);
    }
    if (before.length % 2 === 0 || (next && !isClause(next.image))) return [];
    const written = new Set([...before, ...after].filter(token => isWordToken(token, raw.types)).map(({ image }) => image));
    const blocks = headsInSight(raw, fact.scope, offset, sight).filter(({ isKind }) => !isKind);
    return clauses.filter(({ word }) => !written.has(word) && (word !== 'on' || blocks.length > 0)).map(({ word, text, detail, doc }): Offer => ({
        ...at, label: word, kind: 'word', isSnippet: true, order: 0, detail, doc, text: text || `on \${1|${blocks.map(({ name }) => name).join(',')}|}`,
    }));
}

function ruleOffers(at: { readonly start: number; readonly end: number }, job: SeenJob | undefined, sight: Sight): Offer[] {
    const offers = new Map<string, Offer>();
    const add = (label: string, order: number, detail: string, doc: string): void => {
        if (!offers.has(label)) offers.set(label, { ...at, label, kind: 'name', text: label, isSnippet: false, order, detail, doc });
    };
    for (const { rule, message, subject } of openFindings(job)) add(rule, 0, `${subject ?? 'this job'} has it`, message);
    for (const { name, title, values } of sight.houseRules?.() ?? []) if (name) add(name.value, 1, 'a house rule', title?.value ?? values.because?.value ?? '');
    for (const { id, title, isWaivable, why } of allRules) if (isWaivable) add(id, 2, title, why);
    return [...offers.values()];
}
