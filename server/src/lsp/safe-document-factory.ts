import { DefaultLangiumDocumentFactory, type AstNode, type Cancellation, type LangiumDocument, type TextDocument } from 'langium';

/** A file that is gone or locked by the time it is read reads as empty, instead of stopping the build of all others. */
export class SafeDocumentFactory extends DefaultLangiumDocumentFactory {
    protected override async getUpdatedText<T extends AstNode>(document: LangiumDocument<T>, textDocument: TextDocument | undefined, token: Cancellation.CancellationToken): Promise<string> {
        try {
            return await super.getUpdatedText(document, textDocument, token);
        } catch {
            return '';
        }
    }
}
