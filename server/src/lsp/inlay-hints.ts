import type { LangiumDocument } from 'langium';
import type { InlayHintProvider } from 'langium/lsp';
import { InlayHintKind, type InlayHint, type InlayHintParams } from 'vscode-languageserver';
import { hintsOf } from '../../../language/src/editing/hints.js';
import * as ast from '../../../language/src/syntax/generated/ast.js';
import type { HotroomServerServices } from '../services.js';
import { positionIn } from '../to-lsp.js';

export class HotroomInlayHints implements InlayHintProvider {
    constructor(private readonly services: HotroomServerServices) {}

    async getInlayHints(document: LangiumDocument, { range }: InlayHintParams): Promise<InlayHint[]> {
        const { Reader, Settings } = this.services.editing;
        const kinds = await Settings.inlayHints();
        const analysis = kinds.size > 0 ? Reader.analysis(document) : undefined;
        if (!analysis) return [];
        const text = document.textDocument;
        const from = text.offsetAt(range.start);
        const to = text.offsetAt(range.end);
        const root = document.parseResult.value;
        return hintsOf(analysis, await Settings.displayUnit(), ast.isFile(root) ? root : undefined).filter(({ kind, at }) => kinds.has(kind) && from <= at && at <= to).map(({ kind, at, label, tooltip, side }) => ({
            position: positionIn(text, at), label, kind: kind === 'parameterNames' ? InlayHintKind.Parameter : InlayHintKind.Type,
            ...(tooltip !== '' && { tooltip: { kind: 'markdown', value: tooltip } as const }), ...(side === 'behind' ? { paddingLeft: true } : { paddingRight: true }),
        }));
    }
}
