import type { JobAnalysis } from '../analysis/analyze-job.js';
import { showCitation, type Citation } from '../core/citation.js';
import { isKind, type Block } from '../model/block.js';
import { catalogueEntries } from '../model/given-facts.js';
import { showCount } from '../renderings/show-figures.js';
import { isReadWhole } from '../renderings/rendered-job.js';
import type { ChangedSeverity } from '../renderings/standing.js';
import { ruleSets as knownRuleSets } from '../rule-sets/index.js';
import { allRules } from '../rules/index.js';

/** A source somebody can look up, and what of it this report rests on. */
export interface CitedSource {
    readonly kind: Citation['kind'];
    readonly source: string;
    readonly says: string;
    readonly isFromMemory: boolean;
    /** Rules and facts that cite it. */
    readonly usedBy: readonly string[];
}

export interface UsedRuleSet {
    readonly title: string;
    readonly scope: string;
    readonly isOfSettings: boolean;
    readonly documents: readonly { readonly title: string; readonly edition: string; readonly scope: string }[];
    /** How many of its figures were written down from memory, of how many. */
    readonly clauses: number;
    readonly clausesFromMemory: number;
}

export interface ReviewSources {
    readonly ruleSets: readonly UsedRuleSet[];
    readonly cited: readonly CitedSource[];
    readonly manuals: readonly string[];
    readonly catalogues: readonly string[];
}

export interface NotChecked {
    /** What the documents of the rule sets hold and nobody checked, by rule set. */
    readonly bySet: readonly { readonly title: string; readonly items: readonly string[] }[];
    /** Rules that were not run, or whose findings are not shown, and why. */
    readonly notRun: readonly string[];
}

/** What this report rests on: rule sets with their editions, what findings and figures cite, manuals and catalogues. */
export function reviewSources({ job, ruleSets, findings, facts }: JobAnalysis, catalogues: readonly Block<'catalogue'>[]): ReviewSources {
    const entries = catalogueEntries(job);
    const cited = new Map<string, { readonly citation: Citation; readonly usedBy: Set<string> }>();
    const cite = (citation: Citation | undefined, by: string): void => {
        if (!citation) return;
        const key = JSON.stringify(citation);
        const known = cited.get(key);
        if (known) known.usedBy.add(by); else cited.set(key, { citation, usedBy: new Set([by]) });
    };
    for (const { rule, citation } of findings) cite(citation, rule);
    for (const { path, source } of facts.under()) cite(source, path);
    const order: readonly Citation['kind'][] = ['manual', 'standard', 'house', 'catalogue', 'practice', 'geometry'];
    return {
        ruleSets: ruleSets.map(({ title, scope, documents, clauses }) => ({
            title, scope, isOfSettings: !job.block.written.has('rules'), documents: documents.map(({ title: name, edition, scope: covers }) => ({ title: name, edition, scope: covers })),
            clauses: clauses.length, clausesFromMemory: clauses.filter(({ citation }) => citation.kind === 'standard' && citation.fromMemory).length,
        })),
        cited: [...cited.values()].map(({ citation, usedBy }): CitedSource => ({ kind: citation.kind, source: showCitation(citation), says: citation.text, isFromMemory: citation.kind === 'standard' && citation.fromMemory === true, usedBy: [...usedBy] }))
            .sort((a, b) => order.indexOf(a.kind) - order.indexOf(b.kind) || (a.source < b.source ? -1 : a.source > b.source ? 1 : 0)),
        manuals: [...new Set(entries.flatMap(entry => isKind(entry, 'heater_model') ? [`${entry.name?.value ?? 'heater'}: ${entry.values.manual?.value ?? 'no manual stated'}`] : []))],
        catalogues: catalogues.filter(({ span }) => entries.some(entry => entry.span.uri === span.uri && entry.span.start >= span.start && entry.span.end <= span.end))
            .map(({ name, title, values }) => `${title?.value ?? name?.value ?? 'without a name'}${values.edition ? `, edition ${values.edition.value}` : ''}${values.note ? `. ${values.note.value}` : ''}`),
    };
}

/** @param turnedOff what the settings of the project left out */
export function notChecked({ job, ruleSets, settings }: JobAnalysis, turnedOff: readonly ChangedSeverity[]): NotChecked {
    const others = knownRuleSets.filter(({ id }) => !ruleSets.some(own => own.id === id));
    const off = [...new Set((settings?.severities ?? []).flatMap(place => [...place].flatMap(([name, chosen]) => chosen.value === 'off' ? [name] : [])))];
    return {
        bySet: ruleSets.filter(set => set.notChecked.length > 0).map(({ title, notChecked: items }) => ({ title, items })),
        notRun: [
            ...(isReadWhole(job) ? [] : ['Part of this job cannot be read; what depends on it was not judged.']),
            ...(ruleSets.length === 0 ? ['No published rule set is named, so none was asked.'] : []),
            ...(others.length > 0 ? [`Rule sets the job does not name, and that were not asked: ${others.map(({ title }) => title).join('; ')}.`] : []),
            ...off.map(name => { const own = turnedOff.filter(({ rule }) => rule === name || allRules.some(({ id, family }) => id === rule && family === name)); return `Turned off by the settings of the project: ${name}${own.length > 0 ? `, with ${showCount(own.reduce((sum, { count }) => sum + count, 0), 'finding')} left out` : ''}.`; }),
            ...(job.site ? [] : ['No site is stated: fit, headroom, way in, floor and supply were not judged.']),
        ],
    };
}
