import { AstUtils, type LangiumDocument } from 'langium';
import { nearestName } from '../core/nearest.js';
import { showList, spoken } from '../core/show.js';
import * as ast from '../syntax/generated/ast.js';
import { isReadingReport } from '../syntax/lexer.js';
import type { HotroomServices } from '../syntax/module.js';
import { baseTermOf, nameOf } from '../syntax/words.js';
import { beginsFact, blocksIn, definitionOf, isBlockKind } from '../vocabulary/index.js';
import { isStatement, statementsIn } from '../vocabulary/statements.js';
import { isKind, type Block } from './block.js';
import { showHeader } from './block-mistakes.js';
import { DocumentText } from './document-text.js';
import type { HotroomFile } from './job.js';
import { JobSource, type JobSurroundings } from './job-source.js';
import type { Layer, LoweringContext } from './layers.js';
import { LetValues, namesOver, reportLets } from './lets.js';
import { lowerBlock, reportUnknownBase } from './lower.js';
import { noNames, type NameFound, type Names } from './names.js';
import { wordsAmong } from './arguments.js';
import { withUnfinished } from './unfinished-names.js';
import { keySpan } from './places.js';
import type { LanguageFinding, Reading } from './reading.js';
import { UnknownNames } from './unknown-names.js';
import { lowerUses } from './uses.js';

/** A file as a model, with what was wrong with its text. Its jobs are lowered when somebody asks, as often as more becomes known. */
export interface LoweredFile {
    readonly file: Omit<HotroomFile, 'jobs'>;
    readonly jobs: readonly JobSource[];
    readonly findings: readonly LanguageFinding[];
    /** The lowered block of a fact of this file's tree, for references from other files; those of a job are not among them. */
    readonly blockOf: (fact: ast.Fact) => Block | undefined;
    /** House rules of this file and of those it uses. */
    readonly rules: () => readonly Block<'rule'>[];
}

const lowered = new WeakMap<ast.File, LoweredFile>();

/**
 * Lowers a document that has been linked. Kept for as long as its tree lives; `forget` drops it when the files it uses have changed.
 */
export function lowerFile(document: LangiumDocument, services: HotroomServices): LoweredFile {
    const root = document.parseResult.value;
    if (!ast.isFile(root)) throw new Error(`Not a job file: ${document.uri.toString()}`);
    let result = lowered.get(root);
    if (!result) lowered.set(root, result = new FileLowering(document, services).lower());
    return result;
}
export function forgetLowered(document: LangiumDocument): void {
    const root = document.parseResult.value;
    if (ast.isFile(root)) lowered.delete(root);
}

class FileLowering {
    private readonly text: DocumentText;
    private readonly blocks = new WeakMap<ast.Fact, Block>();
    private isFileWhole = true;

    constructor(private readonly document: LangiumDocument, private readonly services: HotroomServices) {
        this.text = new DocumentText(document);
    }

    lower(): LoweredFile {
        const { text } = this;
        const fileLets = text.fileLets(() => reading);
        const reading: Reading = text.reading(withUnfinished(namesOver([fileLets], noNames), [{ facts: text.items, damaged: text.damaged }]), false, text.letsOver([text.items]));
        this.reportText(reading);
        const unknown = new UnknownNames(this.services);
        this.isFileWhole = !text.damaged.has(-1) && lowerUses(this.document, { items: text.items }, reading, this.services, text.damaged);
        const top: Block[] = [];
        const jobs: JobSource[] = [];
        const ofAJob = text.items.filter(item => !isTopOfFile(item) && beginsFact('job', item.key));
        for (const item of text.items) {
            if (item.key === 'use' || item.key === 'let') continue;
            if (!isTopOfFile(item)) {
                this.isFileWhole = false;
                if (ofAJob.length > 1 && ofAJob.includes(item)) continue;
                const known = [...blocksIn('file'), ...statementsIn('file')];
                const nearest = nearestName(item.key, known);
                reading.report('unknown-word', keySpan(item, reading), `‘${item.key}’ does not stand at the top of a file; ${known.slice(0, -1).join(', ')} and ${known.at(-1) ?? ''} do.${nearest ? ` Is ${nearest} meant?` : isBlockKind(item.key) ? ` It belongs in a ${spoken(showList(definitionOf(item.key).standsIn, 'or'))}: put it between the braces of one.` : ''}`,
                    nearest ? { fixes: [reading.replace(`Write ${nearest}`, keySpan(item, reading), nearest)] } : {});
                continue;
            }
            if (!isBlockKind(item.key)) continue;
            if (item.key === 'job') {
                const around = this.surroundings();
                jobs.push(new JobSource(item, around), ...item.body.filter(fact => fact.key === 'variant' && nameOf(fact) !== undefined).map(fact => new JobSource(item, around, fact)));
                continue;
            }
            const own = this.namesFor(item, reading);
            const its = item.key === 'rule' ? reading : own;
            const context = this.contextFor(text, its, (word, kinds) => { unknown.add(word, kinds); });
            const base = this.layersBelow(item);
            if (base === 'unknown') reportUnknownBase(item, context);
            const block = lowerBlock([...base === 'unknown' ? [] : base, { fact: item, context }] as unknown as [Layer, ...Layer[]], item.key);
            if (its !== reading) reading.findings.push(...its.findings);
            top.push(block);
        }
        if (ofAJob.length > 1) reportMissingJob(ofAJob, text.items, reading);
        reportLets(text.items, reading, fact => text.isDamaged(fact));
        for (const name of fileLets.names) fileLets.find(name);
        reportNamesTaken(text.items, top, reading);
        unknown.report(reading, this.isFileWhole);
        const catalogues = top.filter(block => isKind(block, 'catalogue'));
        const rules = [...top, ...catalogues.flatMap(({ children }) => children)].filter(block => isKind(block, 'rule'));
        if (this.isFileWhole && text.items.every(({ key }) => key === 'use') && reading.findings.length === 0) {
            reading.report('file-without-a-job', { uri: text.uri, start: 0, end: 0 }, 'This file holds no job and nothing that jobs could use. Write a job, such as job first "My first room" { rules us_dwelling }, or a catalogue.');
        }
        return {
            file: { uri: text.uri, catalogues, series: top.filter(block => isKind(block, 'series')), rules },
            jobs, findings: oneForEachPlace(reading.findings),
            blockOf: fact => this.blocks.get(fact),
            rules: () => this.visibleDocuments().flatMap(other => other === this.document ? rules : lowerFile(other, this.services).file.rules),
        };
    }

    /** What the reading of the text found, before any meaning. */
    private reportText(reading: Reading): void {
        const { uri } = this.text;
        const report = this.document.parseResult.lexerReport;
        if (isReadingReport(report)) for (const { id, message, start, end, fix } of report.problems) {
            reading.report(id, { uri, start, end }, message, fix ? { fixes: [{ title: fix.title, safety: 'safe', edits: fix.edits.map(edit => ({ span: { uri, start: edit.start, end: edit.end }, newText: edit.newText })) }] } : {});
        }
        // Cannot happen while the tidying does its work; if it does, the designer still gets one message and a model.
        const [error] = this.document.parseResult.parserErrors;
        if (error && reading.findings.length === 0) {
            const start = Number.isFinite(error.token.startOffset) ? error.token.startOffset : 0;
            reading.report('reading-failed', { uri, start, end: start + Math.max(1, error.token.image.length) }, 'This line cannot be read. Write a word and its value, such as top 37".');
        }
    }

    /** Names seen in a catalogue or a series: its `let`s, and its parameters, whose values only a job knows. */
    private namesFor(item: ast.Fact, file: Reading): Reading {
        const { text } = this;
        const parameters = new Set(item.body.filter(fact => fact.key === 'parameter').map(nameOf));
        const parameter = (name: string): NameFound => { const among = wordsAmong(item.body, name, fact => text.isDamaged(fact)); return { kind: 'waits', ...(among && { among }) }; };
        const outer: Names = {
            find(path) {
                const found = file.names.find(path);
                if (path.length === 1 && path[0] !== undefined && parameters.has(path[0])) return parameter(path[0]);
                if (found.kind !== 'unknown') return found;
                return item.key === 'series' && isBlockKind(path[0] ?? '') ? { kind: 'waits' } : { ...found, known: [...parameters, ...found.known].flatMap(name => name ?? []) };
            },
        };
        const lets = new LetValues(text.letsAmong(item.body, () => own), (_owner, _reading, _at, work) => work());
        const own: Reading = text.reading(withUnfinished(namesOver([lets], outer), [{ facts: item.body, damaged: text.damaged }, { facts: text.items, damaged: text.damaged }]), false, text.letsOver([item.body, text.items]));
        reportLets(item.body, own, fact => text.isDamaged(fact));
        for (const name of lets.names) lets.find(name);
        return own;
    }

    private contextFor(text: DocumentText, reading: Reading, unknownName: LoweringContext['unknownName']): LoweringContext {
        return {
            reading, damaged: text.damaged, unknownName,
            resolve: (word, _kinds, name) => {
                const target = name === undefined ? word.ref.ref : this.factNamed(word, name);
                return target ? () => this.blockAnywhere(target) : 'unknown';
            },
            remember: (fact, block) => { if (text === this.text) this.blocks.set(fact, block); },
            baseOf: fact => this.layersBelow(fact),
            asking: (_owner, _at, work) => work(), missed: () => undefined,
        };
    }

    /** The texts a catalogue entry or a series is made from; an entry made from itself ends the row. */
    private layersBelow(fact: ast.Fact, seen = new Set<ast.Fact>()): readonly Layer[] | 'unknown' {
        const word = baseTermOf(fact)?.word;
        if (!word) return [];
        const base = word.ref.ref;
        seen.add(fact);
        if (!base) return 'unknown';
        if (seen.has(base)) return [];
        const text = new DocumentText(AstUtils.getDocument(base));
        const below = this.layersBelow(base, seen);
        const context = { ...this.contextFor(text, text.reading(noNames, true), () => undefined), remember: () => undefined };
        return below === 'unknown' ? below : [...below, { fact: base, context }];
    }

    private surroundings(): JobSurroundings {
        return {
            textOf: fact => { const home = AstUtils.getDocument(fact); return home === this.document ? this.text : new DocumentText(home); },
            blockOf: fact => this.blockAnywhere(fact),
            findingsOf: fact => lowerFile(AstUtils.getDocument(fact), this.services).findings,
            factNamed: (word, name) => this.factNamed(word, name),
            entryLayers: fact => this.layersBelow(fact),
            unknownNames: () => {
                const names = new UnknownNames(this.services);
                return { add: (word, kinds) => { names.add(word, kinds); }, report: reading => { names.report(reading, this.isFileWhole); } };
            },
        };
    }
    private blockAnywhere(fact: ast.Fact): Block | undefined {
        const home = AstUtils.getDocument(fact);
        return home === this.document ? this.blocks.get(fact) : lowerFile(home, this.services).blockOf(fact);
    }
    private factNamed(word: ast.Word, name: string): ast.Fact | undefined {
        const description = this.services.references.ScopeProvider.getScope({ container: word, property: 'ref', reference: word.ref }).getElement(name);
        return description && this.services.shared.workspace.Imports.factAt(description);
    }
    private visibleDocuments(): readonly LangiumDocument[] {
        const { Imports, LangiumDocuments } = this.services.shared.workspace;
        return Imports.visible(this.document).flatMap(uri => LangiumDocuments.getDocument(uri) ?? []);
    }
}

const isTopOfFile = ({ key }: ast.Fact): boolean => (isBlockKind(key) && blocksIn('file').includes(key)) || isStatement('file', key);

/** Facts of a job that stand in none: the line that begins it is missing, and so the brace at its end has no partner. */
function reportMissingJob(lines: readonly ast.Fact[], items: readonly ast.Fact[], reading: Reading): void {
    const [first, last] = [lines[0], lines.at(-1)];
    if (!first || !last) return;
    const job = items.slice(0, items.indexOf(first)).findLast(({ key, braced }) => key === 'job' && braced);
    const saysAgain = job && lines.some(({ key }) => job.body.some(fact => fact.key === key && !(isBlockKind(key) && definitionOf(key).isRepeatable)));
    if (job && !saysAgain) {
        reading.report('unknown-word', keySpan(first, reading), `‘${first.key}’ and ${lines.length - 1} more line${lines.length > 2 ? 's' : ''} belong in a job. The } before them closes ${showHeader(job)} too early; move it behind them.`);
        return;
    }
    const end = reading.spanOf(last).end;
    const brace = reading.findings.findIndex(({ rule, at }) => rule === 'brace-without-partner' && at.start >= end);
    if (brace >= 0) reading.findings.splice(brace, 1);
    const at = keySpan(first, reading);
    const header = 'job first "First room" {';
    reading.report('unknown-word', at, `‘${first.key}’ and ${lines.length - 1} more line${lines.length > 2 ? 's' : ''} belong in a job. Put a line such as ${header} before them${brace >= 0 ? '' : ', and } behind the last'}.`, {
        fixes: [{ title: 'Begin a job before them', safety: 'review', edits: [{ span: { ...at, end: at.start }, newText: `${header}\n` }, ...brace >= 0 ? [] : [{ span: { ...at, start: end, end }, newText: '\n}' }]] }],
    });
}

/** Names at the top of a file: jobs and the rest among themselves, entries of its catalogues among each other. */
function reportNamesTaken(items: readonly ast.Fact[], top: readonly Block[], reading: Reading): void {
    const taken = new Map<string, ast.Fact>();
    for (const item of items) {
        const name = item.key === 'let' || item.key === 'use' ? undefined : nameOf(item);
        if (name === undefined) continue;
        const same = taken.get(name);
        const word = nameWordSpan(item, reading);
        if (same) reading.report('name-taken', word, `The name ${name} is taken; give this ${spoken(item.key)} another.`, { related: [{ at: nameWordSpan(same, reading), message: `It names this ${spoken(same.key)}.` }] });
        else taken.set(name, item);
    }
    const entries = new Map<string, { readonly entry: Block; readonly catalogue: Block }>();
    for (const catalogue of top) {
        if (catalogue.kind !== 'catalogue') continue;
        for (const entry of catalogue.children) {
            if (!entry.name) continue;
            const same = entries.get(entry.name.value);
            // Two entries of one catalogue were compared where the catalogue was read.
            if (same && same.catalogue !== catalogue) reading.report('name-taken', entry.name.span, `The name ${entry.name.value} is taken; give this ${spoken(entry.kind)} another.`, { related: [{ at: same.entry.name?.span ?? same.entry.head, message: `It names this ${spoken(same.entry.kind)}.` }] });
            else if (!same) entries.set(entry.name.value, { entry, catalogue });
        }
    }
}
function nameWordSpan(fact: ast.Fact, reading: Reading): ReturnType<Reading['spanOf']> {
    const word = fact.phrases[0]?.terms[0];
    return word ? reading.spanOf(word) : keySpan(fact, reading);
}

/** Two findings about the language at one place have one cause; the first stays. */
function oneForEachPlace(findings: readonly LanguageFinding[]): LanguageFinding[] {
    const kept: LanguageFinding[] = [];
    for (const finding of [...findings].sort((a, b) => a.at.start - b.at.start || a.at.end - b.at.end)) {
        const before = kept.at(-1)?.at;
        if (before?.start !== finding.at.start || before.end !== finding.at.end) kept.push(finding);
    }
    return kept;
}
