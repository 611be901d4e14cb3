import type { LangiumDocument } from 'langium';
import type { FoldingRangeProvider } from 'langium/lsp';
import { FoldingRangeKind, type FoldingRange, type SelectionRange, type Position } from 'vscode-languageserver';
import { foldsOf, stretchesAround } from '../../../language/src/editing/ranges.js';
import type { HotroomServerServices } from '../services.js';
import { rangeIn } from '../to-lsp.js';

export class HotroomFolding implements FoldingRangeProvider {
    constructor(private readonly services: HotroomServerServices) {}

    getFoldingRanges(document: LangiumDocument): FoldingRange[] {
        return foldsOf(this.services.editing.Reader.raw(document)).map(({ firstLine, lastLine, kind }) => ({
            startLine: firstLine, endLine: lastLine, ...(kind !== 'block' && { kind: kind === 'comment' ? FoldingRangeKind.Comment : FoldingRangeKind.Imports }),
        }));
    }
}

/** Each place with the stretches around it, from the word to the file. */
export function selectionRanges(services: HotroomServerServices, document: LangiumDocument, positions: readonly Position[]): SelectionRange[] {
    const raw = services.editing.Reader.raw(document);
    const text = document.textDocument;
    return positions.map(position => {
        const around = stretchesAround(raw, text.offsetAt(position)).toReversed().reduce<SelectionRange | undefined>(
            (parent, { start, end }) => ({ range: rangeIn(text, start, end), ...(parent && { parent }) }), undefined);
        return around ?? { range: { start: position, end: position } };
    });
}
