import type { LangiumDocument } from 'langium';
import type { CodeActionProvider } from 'langium/lsp';
import { CodeActionKind, type CodeAction, type CodeActionParams } from 'vscode-languageserver';
import { fixableAt, safeEdits } from '../../../language/src/editing/fixes.js';
import type { HotroomServerServices } from '../services.js';

/** Repairs everything of a file that can be repaired without changing its meaning. */
export const fixAllKind = `${CodeActionKind.SourceFixAll}.hotroom`;
export const codeActionKinds: readonly string[] = [CodeActionKind.QuickFix, fixAllKind];

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
        if (context.only && wants(fixAllKind)) {
            const edits = safeEdits(analysis.findings, uri);
            if (edits.length > 0) actions.push({ title: 'Fix everything that keeps its meaning', kind: fixAllKind, edit: { changes: Places.changes(edits) } });
        }
        return actions;
    }
}
