import type { LangiumDocument } from 'langium';
import type { CodeActionProvider } from 'langium/lsp';
import { CodeActionKind, type CodeAction, type CodeActionParams } from 'vscode-languageserver';
import { fixableAt, safeEdits } from '../../../language/src/editing/fixes.js';
import { convertUnits } from '../../../language/src/editing/refactorings/convert-units.js';
import { extractSeries } from '../../../language/src/editing/refactorings/extract-series.js';
import { moveEntry, type EntryHome } from '../../../language/src/editing/refactorings/move-entry.js';
import type { Refactoring } from '../../../language/src/editing/refactorings/refactoring.js';
import { signRevision } from '../../../language/src/editing/refactorings/sign-revision.js';
import { waiveFindings } from '../../../language/src/editing/refactorings/waive-finding.js';
import type { CalendarDate } from '../../../language/src/vocabulary/values.js';
import type { HotroomServerServices } from '../services.js';

/** Not among the constants of every protocol version. */
const refactorMove = `${CodeActionKind.Refactor}.move`;
/** Repairs everything of a file that can be repaired without changing its meaning. */
export const fixAllKind = `${CodeActionKind.SourceFixAll}.hotroom`;
export const codeActionKinds: readonly string[] = [CodeActionKind.QuickFix, CodeActionKind.RefactorRewrite, CodeActionKind.RefactorExtract, refactorMove, fixAllKind];

const kinds: Readonly<Record<Refactoring['kind'], string>> = { rewrite: CodeActionKind.RefactorRewrite, extract: CodeActionKind.RefactorExtract, move: refactorMove };
/** For how long a waiver is offered: long enough to build the room, short enough to be looked at again. */
const daysOfWaiver = 90;

/** Fixes come from the analysis of the text as it is now, never from an old diagnostic, whose edits may have gone stale. */
export class HotroomCodeActions implements CodeActionProvider {
    constructor(private readonly services: HotroomServerServices) {}

    getCodeActions(document: LangiumDocument, { range, context }: CodeActionParams): CodeAction[] {
        const { Reader, Places } = this.services.editing;
        const analysis = Reader.analysis(document);
        if (!analysis) return [];
        const uri = document.uri.toString();
        const wants = (kind: string): boolean => !context.only || context.only.some(only => kind === only || kind.startsWith(`${only}.`));
        const actions: CodeAction[] = [];
        if (wants(CodeActionKind.QuickFix)) {
            const text = document.textDocument;
            for (const finding of fixableAt(analysis.findings, uri, text.offsetAt(range.start), text.offsetAt(range.end))) {
                const at = Places.range(finding.at);
                const diagnostics = context.diagnostics.filter(({ code, range: { start } }) => code === finding.rule && start.line === at.start.line && start.character === at.start.character);
                finding.fixes?.forEach((fix, i) => actions.push({
                    title: fix.title, kind: CodeActionKind.QuickFix, diagnostics, isPreferred: i === 0 && fix.safety === 'safe', edit: { changes: Places.changes(fix.edits) },
                }));
            }
        }
        const text = document.textDocument;
        const [start, end] = [text.offsetAt(range.start), text.offsetAt(range.end)];
        if (wants(CodeActionKind.QuickFix)) {
            for (const { title, edits, finding } of waiveFindings(analysis, uri, start, end, dayFromNow(daysOfWaiver))) {
                const { start: at } = Places.range(finding.at);
                const diagnostics = context.diagnostics.filter(({ code, range: { start: own } }) => code === finding.rule && own.line === at.line && own.character === at.character);
                actions.push({ title, kind: CodeActionKind.QuickFix, diagnostics, edit: { changes: Places.changes(edits) } });
            }
        }
        const raw = Reader.raw(document);
        const refactorings = [...convertUnits(raw, uri, start, end), ...extractSeries(raw, uri, start), ...moveEntry(raw, uri, start, this.homes(document)), ...signRevision(analysis, uri, start, end, dayFromNow(0))];
        for (const { title, kind, edits, refusal } of refactorings) {
            if (!wants(kinds[kind])) continue;
            actions.push({ title, kind: kinds[kind], ...(refusal === undefined ? { edit: { changes: Places.changes(edits) } } : { disabled: { reason: refusal } }) });
        }
        if (context.only && wants(fixAllKind)) {
            const edits = safeEdits(analysis.findings, uri);
            if (edits.length > 0) actions.push({ title: 'Fix everything that keeps its meaning', kind: fixAllKind, edit: { changes: Places.changes(edits) } });
        }
        return actions;
    }

    /** Files this one uses, with what their catalogues can see. */
    private homes(document: LangiumDocument): readonly EntryHome[] {
        const { Imports, LangiumDocuments } = this.services.shared.workspace;
        return Imports.uses(document).flatMap(({ written, target }): EntryHome[] => {
            const other = target.kind === 'file' ? LangiumDocuments.getDocument(target.uri) : undefined;
            return other ? [{
                uri: other.uri.toString(), path: written, raw: this.services.editing.Reader.raw(other),
                sees: name => Imports.visible(other).some(uri => Imports.exportsOf(uri).has(name)), exports: name => Imports.exportsOf(other.uri).has(name),
            }] : [];
        });
    }
}

function dayFromNow(days: number): CalendarDate {
    const day = new Date();
    day.setDate(day.getDate() + days);
    return { year: day.getFullYear(), month: day.getMonth() + 1, day: day.getDate() };
}
