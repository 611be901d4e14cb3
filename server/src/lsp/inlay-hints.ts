import type { LangiumDocument } from 'langium';
import type { InlayHintProvider } from 'langium/lsp';
import type { InlayHint, InlayHintParams } from 'vscode-languageserver';
import { hintsOf } from '../../../language/src/editing/hints.js';
import type { HotroomServerServices } from '../services.js';
import { positionIn } from '../to-lsp.js';

export class HotroomInlayHints implements InlayHintProvider {
    constructor(private readonly services: HotroomServerServices) {}

    async getInlayHints(document: LangiumDocument, { range }: InlayHintParams): Promise<InlayHint[]> {
        const { Reader, Settings } = this.services.editing;
        const analysis = await Settings.showsInlayHints() ? Reader.analysis(document) : undefined;
        if (!analysis) return [];
        const text = document.textDocument;
        const from = text.offsetAt(range.start);
        const to = text.offsetAt(range.end);
        return hintsOf(analysis, await Settings.displayUnit()).filter(({ at }) => from <= at && at <= to).map(({ at, label, tooltip }) => ({
            position: positionIn(text, at), label, tooltip: { kind: 'markdown', value: tooltip }, paddingLeft: true,
        }));
    }
}
