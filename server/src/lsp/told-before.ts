import type { AstNode, LangiumDocument } from 'langium';
import type { Diagnostic, Range } from 'vscode-languageserver';
import { givenTo, meansTheSame, type GivenFile } from '../../../language/src/analysis/surroundings.js';
import { isLanguageRule } from '../../../language/src/model/language-rules.js';
import type { HotroomServerSharedServices } from '../services.js';
import type { Places } from '../to-lsp.js';

interface Told {
    readonly diagnostics: readonly Diagnostic[];
    /** What they hang on beside the file's own text. */
    readonly circumstances: string;
    readonly files: readonly GivenFile[];
}

/**
 * What was told of each file, and what that hung on: after an edit of a catalogue a file that names none of the entries that changed is told the same
 * again, and is not analysed. Its places in the catalogue move with the entries they stand in.
 */
export class ToldBefore {
    private readonly told = new WeakMap<AstNode, Told>();
    private readonly ranges = new WeakMap<GivenFile, readonly Range[]>();

    constructor(private readonly shared: HotroomServerSharedServices, private readonly places: Places) {}

    /** The diagnostics a file has still. @param circumstances the day and the settings */
    again(document: LangiumDocument, circumstances: string): Diagnostic[] | undefined {
        const before = this.told.get(document.parseResult.value);
        if (before?.circumstances !== circumstances) return undefined;
        const files = givenTo(document, this.shared);
        if (!meansTheSame(document.textDocument.getText(), before.files, files)) return undefined;
        const diagnostics = this.moved(before, files);
        if (diagnostics) this.keep(document, circumstances, diagnostics);
        return diagnostics;
    }

    keep(document: LangiumDocument, circumstances: string, diagnostics: readonly Diagnostic[]): void {
        const files = givenTo(document, this.shared);
        // A mistake of the text may hang on any file of the workspace, such as one that gives a name nobody knows here.
        if (files.length === 0 || diagnostics.some(({ code }) => isLanguageRule(String(code)))) { this.told.delete(document.parseResult.value); return; }
        // While the files stand as they are read.
        for (const file of files) this.rangesOf(file);
        this.told.set(document.parseResult.value, { diagnostics, circumstances, files });
    }

    private rangesOf(file: GivenFile): readonly Range[] {
        let found = this.ranges.get(file);
        if (!found) this.ranges.set(file, found = file.pieces.map(({ start, end }) => this.places.range({ uri: file.uri, start, end })));
        return found;
    }

    /** @returns nothing when a place cannot be found again */
    private moved(before: Told, files: readonly GivenFile[]): Diagnostic[] | undefined {
        const moved: Diagnostic[] = [];
        for (const diagnostic of before.diagnostics) {
            const related = [];
            for (const info of diagnostic.relatedInformation ?? []) {
                const old = before.files.find(({ uri }) => uri === info.location.uri);
                const now = files.find(({ uri }) => uri === info.location.uri);
                const range = old === now ? info.location.range : old && now && this.movedRange(info.location.range, old, now);
                if (!range) return undefined;
                related.push(range === info.location.range ? info : { ...info, location: { ...info.location, range } });
            }
            moved.push(related.length > 0 ? { ...diagnostic, relatedInformation: related } : diagnostic);
        }
        return moved;
    }
    private movedRange(range: Range, old: GivenFile, now: GivenFile): Range | undefined {
        const oldRanges = this.rangesOf(old);
        const at = oldRanges.findIndex(({ start, end }) => isAtOrBefore(start, range.start) && isAtOrBefore(range.end, end));
        const from = oldRanges[at]?.start;
        const other = now.pieces.findIndex(({ id }) => id === old.pieces[at]?.id);
        const to = this.rangesOf(now)[other]?.start;
        if (!from || !to || from.character !== to.character) return undefined;
        // A price may have changed inside: the lines in question have to be the same lines.
        const [before, after] = [old.pieces[at]?.text.split('\n') ?? [], now.pieces[other]?.text.split('\n') ?? []];
        const lines = (text: readonly string[]): string => text.slice(range.start.line - from.line, range.end.line - from.line + 1).join('\n');
        if (before.length !== after.length || lines(before) !== lines(after)) return undefined;
        const by = to.line - from.line;
        return { start: { ...range.start, line: range.start.line + by }, end: { ...range.end, line: range.end.line + by } };
    }
}

const isAtOrBefore = (a: Range['start'], b: Range['start']): boolean => a.line < b.line || (a.line === b.line && a.character <= b.character);
