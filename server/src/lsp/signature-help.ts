import type { LangiumDocument } from 'langium';
import type { SignatureHelpProvider } from 'langium/lsp';
import type { SignatureHelp, SignatureHelpOptions, SignatureHelpParams } from 'vscode-languageserver';
import { signatureAt } from '../../../language/src/editing/signature.js';
import type { HotroomServerServices } from '../services.js';

/** What a series or a function takes, while its values are written. */
export class HotroomSignatureHelp implements SignatureHelpProvider {
    readonly signatureHelpOptions: SignatureHelpOptions = { triggerCharacters: ['(', ','], retriggerCharacters: ['=', ')'] };

    constructor(private readonly services: HotroomServerServices) {}

    provideSignatureHelp(document: LangiumDocument, { position }: SignatureHelpParams): SignatureHelp | undefined {
        const { Reader } = this.services.editing;
        const found = signatureAt(Reader.raw(document), document.textDocument.offsetAt(position), Reader.sight(document));
        if (!found) return undefined;
        const { label, doc, parameters, active } = found;
        return {
            activeSignature: 0,
            // One behind the last marks none of them.
            activeParameter: active ?? parameters.length,
            signatures: [{
                label, ...(doc !== '' && { documentation: doc }),
                parameters: parameters.map(({ start, end, doc: own }) => ({ label: [start, end], ...(own !== '' && { documentation: own }) })),
            }],
        };
    }
}
