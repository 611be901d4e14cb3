import { URI, type LangiumDocument } from 'langium';
import type { Edit, Fix, ReportedFinding } from '../core/finding.js';
import type { Span } from '../core/span.js';
import type { Block } from '../model/block.js';
import type { LoweredFile } from '../model/file.js';
import type { JobSource } from '../model/job-source.js';
import { findingsOfVariant } from '../rules/relocate.js';
import type * as ast from '../syntax/generated/ast.js';
import * as tree from '../syntax/generated/ast.js';
import { isReadingReport } from '../syntax/lexer.js';
import type { HotroomServices } from '../syntax/module.js';
import { analyzeJob, type AnalyzeOptions, type JobAnalysis } from './analyze-job.js';

/** Where one block at the top of a file stood, and its text. */
interface Item { readonly start: number; readonly end: number; readonly text: string }

interface KeptFile {
    /** Everything but the jobs that their meaning hangs on: the rest of the file, the trees of the files it uses, the day. */
    readonly around: string;
    readonly trees: readonly unknown[];
    readonly items: readonly Item[];
    readonly jobs: readonly { readonly text: string; readonly isDamaged: boolean; readonly analyses: readonly JobAnalysis[] }[];
}

/** How many jobs were analysed and how many kept since the program began: for tests that hold an edit to what it touches, and for benchmarks. */
export const jobCounts = { analysed: 0, kept: 0 };

/**
 * Remembers the findings of jobs from one version of a file to the next. A job whose text stays, in a file whose other blocks and used files stay, is not
 * analysed again: its findings move with its text, and the rest is worked out again when somebody asks for it.
 */
export class KeptJobs {
    private readonly files = new Map<string, KeptFile>();
    constructor(private readonly services: HotroomServices) {}

    release(document: LangiumDocument): void { this.files.delete(document.uri.toString()); }

    analyze(document: LangiumDocument, lowered: LoweredFile, options: AnalyzeOptions): readonly JobAnalysis[] {
        const houseRules = lowered.rules();
        const fresh = (sources: readonly JobSource[]): readonly JobAnalysis[] => analyseGroup(sources, houseRules, options);
        const groups = groupsOf(lowered.jobs);
        if (options.rules || options.onDefect === 'throw' || damagedIn(document).has(-1)) {
            this.release(document);
            return groups.flatMap(fresh);
        }
        const uri = document.uri.toString();
        const text = document.textDocument.getText();
        const items = itemsOf(document, text);
        const jobTexts = groups.map(([source]) => source ? textOf(source.fact, text) : '');
        const around = this.around(items, jobTexts, options);
        const trees = this.trees(document);
        const before = this.files.get(uri);
        const isSame = before?.around === around && before.trees.length === trees.length && before.trees.every((one, i) => one === trees[i]);
        const open = isSame ? [...before.jobs] : [];
        const damaged = damagedIn(document);
        // Where braces or lines are damaged, one block may have swallowed part of another.
        const isDamaged = ([source]: readonly JobSource[]): boolean => source !== undefined && [...damaged].some(offset => startOf(source.fact) <= offset && offset < endOf(source.fact));
        const jobs = groups.map((group, i) => {
            const own = jobTexts[i] ?? '';
            const at = open.findIndex(job => job.text === own && job.analyses.length === group.length);
            const [known] = at < 0 ? [] : open.splice(at, 1);
            if (!known || !before || known.isDamaged || isDamaged(group)) { jobCounts.analysed += group.length; return { text: own, isDamaged: isDamaged(group), analyses: fresh(group) }; }
            jobCounts.kept += group.length;
            const move = mover(uri, before.items, items);
            let again: readonly JobAnalysis[] | undefined;
            return { text: own, isDamaged: false, analyses: known.analyses.map(({ findings }, k) => new MovedJob(findings.map(finding => moveFinding(finding, move)), () => (again ??= fresh(group))[k])) };
        });
        this.files.set(uri, { around, trees, items, jobs });
        return jobs.flatMap(({ analyses }) => analyses);
    }

    /** The text around the jobs as a whole, and what else their findings hang on. */
    private around(items: readonly Item[], jobTexts: readonly string[], { today, settings }: AnalyzeOptions): string {
        const jobs = new Set(jobTexts);
        return JSON.stringify([items.filter(({ text }) => !jobs.has(text)).map(({ text }) => text), today, settings?.key, this.services.shared.workspace.Imports.roots.map(String)]);
    }
    /** The trees of all files the file hangs on: a file that is read anew has a new one. */
    private trees(document: LangiumDocument): readonly unknown[] {
        const { Imports, LangiumDocuments } = this.services.shared.workspace;
        return [...Imports.dependencies(document)].sort().map(uri => LangiumDocuments.getDocument(URI.parse(uri))?.parseResult.value);
    }
}

function analyseGroup(sources: readonly JobSource[], houseRules: readonly Block<'rule'>[], options: AnalyzeOptions): readonly JobAnalysis[] {
    const found: JobAnalysis[] = [];
    for (const source of sources) {
        const analysed = analyzeJob(source, houseRules, options);
        const [base] = found;
        found.push(source.variant && base ? { ...analysed, findings: findingsOfVariant(analysed.findings, base.findings, { name: analysed.job.variant?.name ?? '', own: analysed.job.block.span, head: analysed.job.block.head, headOfJob: base.job.block.head }) } : analysed);
    }
    return found;
}

/** A job whose findings are known; the rest is worked out when it is asked for. */
class MovedJob implements JobAnalysis {
    constructor(readonly findings: readonly ReportedFinding[], private readonly whole: () => JobAnalysis | undefined) {}
    get job(): JobAnalysis['job'] { return this.analysis.job; }
    get results(): JobAnalysis['results'] { return this.analysis.results; }
    get facts(): JobAnalysis['facts'] { return this.analysis.facts; }
    get ruleSets(): JobAnalysis['ruleSets'] { return this.analysis.ruleSets; }
    get names(): JobAnalysis['names'] { return this.analysis.names; }
    private get analysis(): JobAnalysis {
        const found = this.whole();
        if (!found) throw new Error('A job that was analysed before is gone');
        return found;
    }
}

/** Key offsets of what could not be read whole. */
function damagedIn(document: LangiumDocument): ReadonlySet<number> {
    const report = document.parseResult.lexerReport;
    return isReadingReport(report) ? report.damaged : new Set();
}

/** A job with its variants, in the order written. */
function groupsOf(sources: readonly JobSource[]): readonly (readonly JobSource[])[] {
    const groups = new Map<ast.Fact, JobSource[]>();
    for (const source of sources) {
        const group = groups.get(source.fact);
        if (group) group.push(source); else groups.set(source.fact, [source]);
    }
    return [...groups.values()];
}

function itemsOf(document: LangiumDocument, text: string): readonly Item[] {
    const root = document.parseResult.value;
    return tree.isFile(root) ? root.items.map(item => ({ start: startOf(item), end: endOf(item), text: textOf(item, text) })) : [];
}
const startOf = (fact: ast.Fact): number => fact.$cstNode?.offset ?? 0;
const endOf = (fact: ast.Fact): number => fact.$cstNode?.end ?? 0;
const textOf = (fact: ast.Fact, text: string): string => text.slice(startOf(fact), endOf(fact));

/** Where a place of the text before stands now: with the block it stood in. */
function mover(uri: string, before: readonly Item[], now: readonly Item[]): (span: Span) => Span {
    const taken = new Set<Item>();
    const shifts = before.flatMap(item => {
        const same = now.find(other => !taken.has(other) && other.text === item.text);
        if (!same) return [];
        taken.add(same);
        return [{ item, by: same.start - item.start }];
    });
    return span => {
        if (span.uri !== uri) return span;
        const shift = shifts.find(({ item }) => item.start <= span.start && span.start <= item.end);
        return !shift || shift.by === 0 ? span : { uri, start: span.start + shift.by, end: span.end + shift.by };
    };
}

function moveFinding(finding: ReportedFinding, move: (span: Span) => Span): ReportedFinding {
    const edit = ({ span, newText }: Edit): Edit => ({ span: move(span), newText });
    const fix = (one: Fix): Fix => ({ ...one, edits: one.edits.map(edit) });
    return {
        ...finding, at: move(finding.at),
        ...(finding.related && { related: finding.related.map(one => ({ ...one, at: move(one.at) })) }),
        ...(finding.fixes && { fixes: finding.fixes.map(fix) }),
        ...(finding.origin && { origin: move(finding.origin) }),
        ...(finding.waived && { waived: { ...finding.waived, at: move(finding.waived.at) } }),
    };
}
