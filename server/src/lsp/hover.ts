import type { LangiumDocument } from 'langium';
import type { HoverProvider } from 'langium/lsp';
import type { Hover, HoverParams } from 'vscode-languageserver';
import { hoverAt } from '../../../language/src/editing/hover.js';
import type { HotroomServerServices } from '../services.js';
import { rangeIn } from '../to-lsp.js';

export class HotroomHover implements HoverProvider {
    constructor(private readonly services: HotroomServerServices) {}

    async getHoverContent(document: LangiumDocument, { position }: HoverParams): Promise<Hover | undefined> {
        const { Reader, Places, Settings, handbook } = this.services.editing;
        const analysis = Reader.analysis(document);
        if (!analysis) return undefined;
        const unit = await Settings.displayUnit();
        const input = { raw: Reader.raw(document), analysis, sight: Reader.sight(document), textAt: Places.textAt.bind(Places), ...(unit && { unit }) };
        const found = hoverAt(input, document.textDocument.offsetAt(position));
        if (!found) return undefined;
        // A few lines to read at a glance, then the rest in smaller steps below the rule.
        const reference = found.topic === undefined ? undefined : handbook('reference');
        const more = [...found.more.map(line => `- ${line}`), ...(reference === undefined ? [] : [`- [${found.topic ?? ''} in the language reference](${reference}#${found.topic ?? ''})`])];
        const value = [found.lines.join('  \n'), ...(more.length > 0 ? [more.join('\n')] : [])].join('\n\n---\n\n');
        return { contents: { kind: 'markdown', value }, range: rangeIn(document.textDocument, found.start, found.end) };
    }
}
