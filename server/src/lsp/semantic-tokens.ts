import type { LangiumDocument } from 'langium';
import type { SemanticTokenProvider } from 'langium/lsp';
import { SemanticTokensBuilder, type SemanticTokens, type SemanticTokensDelta, type SemanticTokensDeltaParams, type SemanticTokensOptions, type SemanticTokensParams, type SemanticTokensRangeParams } from 'vscode-languageserver';
import { highlights, type HighlightKind } from '../../../language/src/editing/highlight.js';
import type { HotroomServerServices } from '../services.js';
import { positionIn } from '../to-lsp.js';

const types = ['keyword', 'property', 'variable', 'enumMember', 'operator', 'number', 'string', 'comment', 'function', 'parameter', 'class'] as const;
const modifiers = ['declaration'] as const;
type TokenType = (typeof types)[number];

const typeOf: Readonly<Record<HighlightKind, TokenType>> = {
    block: 'keyword', property: 'property', name: 'variable', reference: 'variable', choice: 'enumMember', connective: 'keyword', figure: 'number',
    text: 'string', remark: 'comment', operator: 'operator', statement: 'keyword', function: 'function', member: 'property', parameter: 'parameter', base: 'class', kind: 'class',
};

export class HotroomSemanticTokens implements SemanticTokenProvider {
    readonly tokenTypes: Record<string, number> = Object.fromEntries(types.map((name, i) => [name, i]));
    readonly tokenModifiers: Record<string, number> = Object.fromEntries(modifiers.map((name, i) => [name, 2 ** i]));
    readonly semanticTokensOptions: SemanticTokensOptions = { legend: { tokenTypes: [...types], tokenModifiers: [...modifiers] }, full: { delta: true }, range: true };
    /** What each open file was last told, for the difference to it. */
    private readonly told = new Map<string, SemanticTokensBuilder>();

    constructor(private readonly services: HotroomServerServices) {
        services.shared.workspace.TextDocuments.onDidClose(({ document }) => { this.told.delete(document.uri); });
    }

    semanticHighlight(document: LangiumDocument, { textDocument: { uri } }: SemanticTokensParams): SemanticTokens {
        const builder = new SemanticTokensBuilder();
        this.told.set(uri, builder);
        this.fill(builder, document);
        return builder.build();
    }

    semanticHighlightDelta(document: LangiumDocument, { textDocument: { uri }, previousResultId }: SemanticTokensDeltaParams): SemanticTokens | SemanticTokensDelta {
        const builder = this.told.get(uri);
        if (!builder) return this.semanticHighlight(document, { textDocument: { uri } });
        builder.previousResult(previousResultId);
        this.fill(builder, document);
        return builder.buildEdits();
    }

    semanticHighlightRange(document: LangiumDocument, { range }: SemanticTokensRangeParams): SemanticTokens {
        const builder = new SemanticTokensBuilder();
        this.fill(builder, document, document.textDocument.offsetAt(range.start), document.textDocument.offsetAt(range.end));
        return builder.build();
    }

    private fill(builder: SemanticTokensBuilder, document: LangiumDocument, from = 0, to = Infinity): void {
        for (const { start, end, kind } of highlights(this.services.editing.Reader.raw(document))) {
            if (end <= from || start >= to) continue;
            const { line, character } = positionIn(document.textDocument, start);
            builder.push(line, character, end - start, this.tokenTypes[typeOf[kind]] ?? 0, kind === 'name' ? 1 : 0);
        }
    }
}
