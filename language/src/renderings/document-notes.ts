import { showHeat } from '../facts/strength-facts.js';
import { isReadWhole, type RenderedJob } from './rendered-job.js';
import type { Results } from '../assembly/results.js';
import type { ReportedFinding } from '../core/finding.js';
import { showList } from '../core/show.js';
import { isMoulding, mouldingPractice } from '../engines/fittings/ceiling-moulding.js';
import { isKind, type Block } from '../model/block.js';
import { catalogueEntries } from '../model/given-facts.js';
import { keyOfWord, notCheckedBy, showConflict, strictest, type RuleSet } from '../rule-sets/index.js';
import { notOnList } from './not-on-list.js';
import { numberingRule } from './part-place.js';
import { isMetricScale, purposeOf, scaleOf, showCount, type Scale } from './show-figures.js';
import { showSlatGap, slatGaps } from './slat-gaps.js';
import { severityChanges, waiversInForce } from './standing.js';

/** What a reader has to know of a list: open findings, roundings, rules with their editions, manuals, catalogues, and what nobody checked. */
export function documentNotes(analysis: RenderedJob, catalogues: readonly Block<'catalogue'>[] = []): readonly string[] {
    const { job, results, settings } = analysis;
    const scale = scaleOf({ job, ...(settings && { settings }) });
    return [
        ...stateNotes(analysis),
        roundingNote(scale),
        ...(results.parts.length > 0 ? [numberingRule] : []),
        ...slatGaps({ results }).map(gap => showSlatGap(gap, scale)),
        ...strengthNotes(results),
        ...(results.parts.some(isMoulding) ? [mouldingPractice] : []),
        ...sourceNotes(analysis, catalogues),
        // last, where a reader who takes the list for the whole order still comes upon it
        `Not on this list: ${notOnList({ job, results }).join('; ')}.`,
    ];
}

/** The state a job is in: what is open, what could not be read, what somebody accepted or chose to weigh otherwise. */
export const stateNotes = ({ job, findings, leftOut = [] }: Pick<RenderedJob, 'job' | 'findings' | 'leftOut'>): readonly string[] => [
    ...openFindings(findings),
    ...(isReadWhole(job) ? [] : ['Part of this job could not be read; what depends on it is left out.']),
    ...accepted(findings),
    ...changedSeverities(findings, leftOut),
];

/** What a job was held against: rule sets with their editions, manuals, catalogues, and what nobody checked. */
export function sourceNotes({ job, ruleSets }: Pick<RenderedJob, 'job' | 'ruleSets'>, catalogues: readonly Block<'catalogue'>[] = []): readonly string[] {
    const entries = catalogueEntries(job);
    return [
        ...ruleSets.map(set => ruleSetNote(set, !job.block.written.has('rules'))),
        ...(ruleSets.length === 0 ? ['No published rule set is named in this job, so none was checked against.'] : []),
        ...decided(job, ruleSets),
        ...manuals(entries),
        ...usedCatalogues(entries, catalogues),
        ...notChecked(ruleSets),
    ];
}

function openFindings(findings: readonly ReportedFinding[]): string[] {
    const count = (severity: ReportedFinding['severity']): number => findings.filter(finding => finding.severity === severity).length;
    const errors = count('error');
    const open = [showCount(errors, 'error'), showCount(count('warning'), 'warning')].filter(words => !words.startsWith('0 '));
    if (open.length === 0) return [];
    return [`This job stands with ${showList(open)}.${errors > 0 ? ' Do not cut before the errors are settled.' : ''}`];
}

/** For what the benches were checked, by whose judgement, and what of them was not. */
function strengthNotes({ strength }: Pick<Results, 'strength'>): string[] {
    if (!strength?.result.benches.some(({ members }) => members.some(({ checks }) => checks.length > 0))) return [];
    const { loads } = strength;
    return [
        `Strength of benches: ${loads.filter(({ on }) => on === 'every bench' || strength.input.benches.some(({ layout }) => layout.isAccessible)).map(({ title }) => title).join('; ')}; ${showHeat(strength)}. ` +
        'Not checked: how a rail is fastened to a ledger, the heads of box legs, back rests, guards, and what the wall panels carry.',
    ];
}

function roundingNote(scale: Scale): string {
    const purpose = purposeOf(scale);
    switch (purpose) {
        case 'shop': return `Lengths are rounded to ${isMetricScale(scale) ? '0.5 mm' : '1/32"'} for the saw; ≈ stands before a figure that is not the exact value.`;
        case 'drawing': return `Lengths are rounded to ${isMetricScale(scale) ? '0.5 mm' : '1/16"'}, as the settings of the project say; ≈ stands before a figure that is not the exact value.`;
        case 'exact': return 'Lengths are not rounded, as the settings of the project say; ≈ stands before a figure that has no end.';
        default: return purpose satisfies never;
    }
}

/** What somebody has accepted, each waiver once. */
function accepted(findings: readonly ReportedFinding[]): string[] {
    return waiversInForce(findings).map(({ rule, by, until, because }) => `Accepted by ${by} until ${until}: ${rule} (${because}).`);
}

function changedSeverities(findings: readonly ReportedFinding[], leftOut: readonly ReportedFinding[]): string[] {
    const changes = severityChanges([...findings, ...leftOut]);
    return changes.length === 0 ? [] : [`The settings of the project change severities: ${changes.map(({ rule, from, to, count }) => `${rule} from ${from} to ${to} (${showCount(count, 'finding')})`).join('; ')}.`];
}

const ruleSetNote = ({ title, documents }: RuleSet, isOfProject: boolean): string =>
    `Rules used: ${title}${documents.length > 0 ? ` (${documents.map(document => `${document.title}, ${document.edition}`).join('; ')})` : ''}${isOfProject ? '; named by the settings of the project, as the job names none' : ''}.`;

/** Where texts disagree and the job has chosen, with who decided it. */
const decided = (job: RenderedJob['job'], ruleSets: readonly RuleSet[]): string[] => job.decisions.flatMap(({ values: { about, because, by } }) => {
    const key = about && keyOfWord(about.value);
    const conflicts = (key && strictest(ruleSets, key)?.conflicts)?.filter(({ kind }) => kind === 'decided') ?? [];
    return conflicts.map(conflict => `${showConflict(conflict, job.unit)} Decided by ${by?.value ?? 'nobody named'}: ${because?.value ?? 'no reason given'}.`);
});

function manuals(entries: readonly Block[]): string[] {
    const named = entries.flatMap(entry => isKind(entry, 'heater_model') ? [entry.values.manual?.value ?? `none stated for ${entry.name?.value ?? 'a heater'}`] : []);
    return named.length > 0 ? [`Heater manual used: ${[...new Set(named)].join('; ')}. The manual that comes with the heater goes before it.`] : [];
}

/** The catalogues that hold an entry the job depends on; which file they stand in is for the caller to find out. */
function usedCatalogues(entries: readonly Block[], catalogues: readonly Block<'catalogue'>[]): string[] {
    return catalogues
        .filter(({ span }) => entries.some(entry => entry.span.uri === span.uri && entry.span.start >= span.start && entry.span.end <= span.end))
        .map(({ name, title, values }) => {
            const edition = values.edition ? `, edition ${values.edition.value}` : '';
            return `Catalogue used: ${title?.value ?? name?.value ?? 'without a name'}${edition}.${values.note ? ` ${values.note.value}` : ''}`;
        });
}

function notChecked(ruleSets: readonly RuleSet[]): string[] {
    const items = notCheckedBy(ruleSets);
    return items.length > 0 ? [`Not checked: ${items.join('; ')}.`] : [];
}
