import { URI, UriUtils, type LangiumDocument, type ParseResult } from 'langium';
import { analyze, type Analysis, type AnalyzeOptions } from '../../../language/src/analyze.js';
import type { SeenJob, SeenName, Sight } from '../../../language/src/editing/offer.js';
import { readRaw, type RawText } from '../../../language/src/editing/raw-facts.js';
import type { Block } from '../../../language/src/model/block.js';
import type { HotroomFile } from '../../../language/src/model/job.js';
import { HotroomLexer } from '../../../language/src/syntax/lexer.js';
import { isShared } from '../../../language/src/vocabulary/index.js';
import type { HotroomServerServices } from '../services.js';
import { dayOf } from '../today.js';
import { relativePath } from './relative-path.js';

/** What every feature asks of a document: its raw tokens, its analysis, and what can be named in it. */
export class DocumentReader {
    readonly lexer: HotroomLexer;
    private readonly raws = new WeakMap<ParseResult, RawText>();

    constructor(private readonly services: HotroomServerServices) {
        const { Lexer } = services.parser;
        if (!(Lexer instanceof HotroomLexer)) throw new Error('The lexer is not the one of the language.');
        this.lexer = Lexer;
    }

    /** Tokens of the text as it is now, kept until the text changes. */
    raw(document: LangiumDocument): RawText {
        let raw = this.raws.get(document.parseResult);
        const text = document.textDocument.getText();
        if (raw?.text !== text) this.raws.set(document.parseResult, raw = readRaw(text, this.lexer));
        return raw;
    }

    /** The day, and what the project says for a file. */
    circumstances(document: LangiumDocument): Pick<AnalyzeOptions, 'today' | 'settings'> {
        const { ProjectSettings, now } = this.services.shared.workspace;
        const settings = ProjectSettings.of(document.uri);
        return { today: dayOf(now()), ...(settings && { settings }) };
    }

    /** The analysis; nothing when it fails, which the file's own diagnostic tells. */
    analysis(document: LangiumDocument): Analysis | undefined {
        try {
            return analyze(document, this.services, this.circumstances(document));
        } catch {
            return undefined;
        }
    }

    sight(document: LangiumDocument): Sight {
        return {
            names: (kinds, offset) => this.names(document, kinds, offset),
            paths: () => this.services.shared.workspace.LangiumDocuments.all.filter(other => other !== document && other.uri.path.endsWith('.hotroom') && other.uri.scheme === document.uri.scheme)
                .map(other => relativePath(document.uri, other.uri)).toArray().sort(),
            job: offset => this.jobAt(document, offset),
            series: name => this.seriesNamed(document, name),
            houseRules: () => this.filesInSight(document).flatMap(({ rules }) => rules),
        };
    }

    /** The innermost job or variant around an offset; around a series, the first job of the file that is made from it. */
    private jobAt(document: LangiumDocument, offset: number): SeenJob | undefined {
        const analysis = this.analysis(document);
        const around = (analysis?.jobs ?? []).filter(({ job: { block: { span } } }) => span.start <= offset && offset <= span.end);
        const [own] = [...around].sort((a, b) => (a.job.block.span.end - a.job.block.span.start) - (b.job.block.span.end - b.job.block.span.start));
        if (own) return { analysis: own };
        const series = analysis?.file.series.find(({ span }) => span.start <= offset && offset <= span.end);
        const made = series && analysis?.jobs.find(({ job: { block } }) => block.base?.value === series.name?.value);
        return made && { analysis: made, as: made.job.block.name?.value ?? 'the job' };
    }

    private seriesNamed(document: LangiumDocument, name: string): Block<'series'> | undefined {
        return this.filesInSight(document).flatMap(({ series }) => series).find(series => series.name?.value === name);
    }

    /** This file and those it uses, as far as they can be analysed. */
    private filesInSight(document: LangiumDocument): readonly HotroomFile[] {
        const { Imports, LangiumDocuments } = this.services.shared.workspace;
        return Imports.visible(document).flatMap(uri => {
            const other = UriUtils.equals(uri, document.uri) ? document : LangiumDocuments.getDocument(uri);
            return (other && this.analysis(other)?.file) ?? [];
        });
    }

    /** Entries of this file's catalogues and of the files it uses, and the blocks of the job around `offset`, of some kinds. */
    private names(document: LangiumDocument, kinds: readonly string[], offset: number): SeenName[] {
        const found: SeenName[] = [];
        const { Imports } = this.services.shared.workspace;
        const file = this.analysis(document)?.file;
        for (const job of file?.jobs ?? []) {
            if (!(job.block.span.start <= offset && offset <= job.block.span.end)) continue;
            for (const { name, kind, title } of job.block.children) if (name && kinds.includes(kind)) found.push({ name: name.value, kind, ...(title && { title: title.value }) });
        }
        if (!kinds.some(isShared)) return found;
        for (const uri of Imports.visible(document)) {
            const from = UriUtils.equals(uri, document.uri) ? undefined : relativePath(document.uri, uri);
            const titles = this.titles(uri, document, file);
            for (const same of Imports.exportsOf(uri).values()) for (const { name, kind } of same) {
                const title = titles.get(name);
                if (kinds.includes(kind)) found.push({ name, kind, ...(from !== undefined && { from }), ...(title !== undefined && { title }) });
            }
        }
        return found;
    }

    private titles(uri: URI, document: LangiumDocument, own: HotroomFile | undefined): ReadonlyMap<string, string> {
        const other = this.services.shared.workspace.LangiumDocuments.getDocument(uri);
        const file = UriUtils.equals(uri, document.uri) ? own : other && this.analysis(other)?.file;
        return new Map((file?.catalogues ?? []).flatMap(({ children }) => children.flatMap(({ name, title }) => name && title ? [[name.value, title.value] as const] : [])));
    }
}
