import type { JobAnalysis } from '../analysis/analyze-job.js';
import { sameFingerprint } from '../assembly/model-fingerprint.js';
import type { ComparedJob } from '../compare/compare-jobs.js';
import { consequenceTitles } from '../compare/describe-change.js';
import { reportRows, type ReportRow } from '../compare/comparison-report.js';
import { showCitation } from '../core/citation.js';
import type { Severity } from '../core/finding.js';
import type { Span } from '../core/span.js';
import { showFigureBoth } from '../editing/show-both.js';
import type { Block } from '../model/block.js';
import { cautions } from '../renderings/cautions.js';
import { countSeverities, severities, type SeverityCounts } from '../renderings/findings-text.js';
import { isReadWhole, jobName } from '../renderings/rendered-job.js';
import { severityChanges } from '../renderings/standing.js';
import { ruleById } from '../rules/index.js';
import { showDate, type CalendarDate } from '../vocabulary/values.js';
import { reviewFigures, type FigureGroup, type ReviewFigure } from './review-figures.js';
import { notChecked, reviewSources, type NotChecked, type ReviewSources } from './review-sources.js';

/** Where something is written, as a reader finds it. */
export interface ReviewPlace { readonly text: string; readonly at: Span }

export interface ReviewFinding {
    readonly severity: Severity;
    readonly rule: string;
    /** What the rule looks for, in a few words. */
    readonly title: string;
    readonly message: string;
    readonly place: ReviewPlace;
    readonly measured?: string;
    readonly required?: string;
    /** Whose requirement it is, with edition and clause, and what that says. */
    readonly source?: string;
    readonly sourceSays?: string;
    readonly isFromMemory?: true;
    /** What the severity is by itself, where the settings of the project chose another. */
    readonly usualSeverity?: Severity;
    /** Whether it was not there before, where the report is told what was before. */
    readonly isNew?: true;
}

export type WaiverStanding = 'in force' | 'over' | 'accepts nothing';
export interface ReviewWaiver {
    readonly rule: string;
    readonly on?: string;
    readonly because: string;
    readonly by: string;
    readonly until: string;
    readonly standing: WaiverStanding;
    readonly place: ReviewPlace;
    /** What it accepts, as the findings say it. */
    readonly accepts: readonly string[];
}

export type SignOffStanding = 'matches' | 'changed since' | 'another revision' | 'cannot be told';
export interface ReviewSignOff {
    readonly revision: string;
    readonly by: string;
    readonly date: string;
    readonly fingerprint: string;
    readonly standing: SignOffStanding;
    readonly place: ReviewPlace;
}

export interface ReviewChanges {
    /** What the job is compared with: `main`, `HEAD`, a file. */
    readonly since: string;
    readonly isNewJob: boolean;
    readonly groups: readonly { readonly title: string; readonly rows: readonly { readonly what: string; readonly how: string; readonly detail: string; readonly place?: string }[] }[];
}

/** All a reviewer looks at before a job is cut, as data; text, Markdown, HTML and JSON are made of it. */
export interface ReviewReport {
    readonly job: { readonly name: string; readonly title: string; readonly number?: string; readonly revision?: string; readonly drawnBy?: string; readonly file: string };
    /** What a signature would stand for; absent while part of the job cannot be read. */
    readonly fingerprint?: string;
    readonly day?: string;
    readonly counts: SeverityCounts;
    /** Open ones, the gravest first; within a severity in the order of the text. */
    readonly findings: readonly ReviewFinding[];
    readonly waivers: readonly ReviewWaiver[];
    readonly glance: readonly ReviewFigure[];
    readonly figures: readonly FigureGroup[];
    readonly changes?: ReviewChanges;
    readonly notChecked: NotChecked;
    readonly sources: ReviewSources;
    readonly signOffs: readonly ReviewSignOff[];
    readonly cautions: readonly string[];
}

export interface ReviewOptions {
    readonly file: string;
    /** `birch-point.hotroom:47`. */
    readonly showPlace: (span: Span) => string;
    /** The day the report is made. */
    readonly today?: CalendarDate;
    /** Catalogues of the job's own file and of those it uses. */
    readonly catalogues?: readonly Block<'catalogue'>[];
    readonly since?: { readonly label: string; readonly compared: ComparedJob };
}

/**
 * The review report of one analysed job.
 * @param analysis with the mistakes of the text that concern it among its findings
 */
export function reviewReport(analysis: JobAnalysis, options: ReviewOptions): ReviewReport {
    const { job, results, findings } = analysis;
    const { number, revision, drawn_by: drawnBy } = job.block.values;
    const place = (at: Span): ReviewPlace => ({ text: options.showPlace(at), at });
    const open = findings.filter(({ waived }) => !waived);
    const isWhole = isReadWhole(job);
    const news = newMessages(options.since?.compared);
    const { glance, groups } = reviewFigures(analysis, place);
    return {
        job: {
            name: jobName(job), title: job.block.title?.value ?? jobName(job), file: options.file,
            ...(number && { number: number.value }), ...(revision && { revision: revision.value }), ...(drawnBy && { drawnBy: drawnBy.value }),
        },
        ...(isWhole && { fingerprint: results.fingerprint }), ...(options.today && { day: showDate(options.today) }),
        counts: countSeverities(open),
        findings: severities.flatMap(severity => open.filter(finding => finding.severity === severity)).map(({ severity, rule, message, at, measured, required, citation, changed }): ReviewFinding => ({
            severity, rule, title: ruleById(rule)?.title ?? '', message, place: place(at),
            ...(measured && { measured: showFigureBoth(measured, job.unit) }), ...(required && { required: showFigureBoth(required, job.unit) }),
            ...(citation && { source: showCitation(citation), ...(citation.text !== showCitation(citation) && { sourceSays: citation.text }), ...(citation.kind === 'standard' && citation.fromMemory && { isFromMemory: true }) }),
            ...(changed && { usualSeverity: changed.from }), ...(news.has(message) && { isNew: true }),
        })),
        waivers: job.waivers.map(({ rule, subject, because, by, until, span }): ReviewWaiver => {
            const day = showDate(until.value);
            const accepts = findings.filter(({ waived }) => waived?.at.start === span.start && waived.at.uri === span.uri);
            return {
                rule: rule.value, ...(subject && { on: subject.value }), because, by, until: day, place: place(span), accepts: accepts.map(({ message }) => message),
                standing: accepts.length > 0 ? 'in force' : options.today && day < showDate(options.today) ? 'over' : 'accepts nothing',
            };
        }),
        glance, figures: groups, ...(options.since && { changes: changesOf(options.since.label, options.since.compared) }),
        notChecked: notChecked(analysis, severityChanges(analysis.leftOut ?? [])),
        sources: reviewSources(analysis, options.catalogues ?? []),
        signOffs: job.signOffs.map(({ values, head }): ReviewSignOff => ({
            revision: values.revision?.value ?? '', by: values.by?.value ?? '', date: values.date ? showDate(values.date.value) : '', fingerprint: values.fingerprint?.value ?? '', place: place(head),
            standing: values.revision?.value !== revision?.value ? 'another revision' : !isWhole ? 'cannot be told' : sameFingerprint(values.fingerprint?.value ?? '', results.fingerprint) ? 'matches' : 'changed since',
        })),
        cautions,
    };
}

/** What the findings say that are on the later side only. */
function newMessages(compared: ComparedJob | undefined): ReadonlySet<string> {
    const after = compared?.after;
    if (!after || !compared.before) return new Set();
    return new Set(compared.changes.flatMap(change => change.what === 'finding' && change.to && !change.from ? after.model.messageOf(change.to.key) ?? [] : []));
}

/** What somebody wrote, before what follows from it. */
const isWritten = ({ change }: ReportRow): boolean => change.what === 'given' || change.what === 'job' || change.what === 'catalogue' || change.what === 'waiver' || change.what === 'rule-set';
/** New findings stand among the findings, marked as new, or with the waiver that accepts them. */
const isToldAbove = ({ change }: ReportRow): boolean => change.what === 'finding' && change.from === undefined;

function changesOf(since: string, compared: ComparedJob): ReviewChanges {
    const groups = compared.before && compared.after ? reportRows(compared) : [];
    const inWords = (title: string, rows: readonly ReportRow[]): ReviewChanges['groups'] => rows.length === 0 ? []
        : [{ title, rows: rows.map(({ subject, says, detail, place }) => ({ what: subject, how: says, detail, ...(place !== undefined && { place: place.split('/').at(-1) ?? place }) })) }];
    return {
        since, isNewJob: !compared.before,
        groups: [
            ...inWords('Written otherwise', groups.flatMap(({ rows }) => rows.filter(isWritten))),
            ...groups.flatMap(({ consequence, rows }) => inWords(`What follows: ${consequenceTitles[consequence].toLowerCase()}`, rows.filter(row => !isWritten(row) && !isToldAbove(row)))),
        ],
    };
}
