import { DocumentState, type AstNode, type BuildOptions, type Cancellation, type LangiumDocument } from 'langium';
import { forget } from '../../../language/src/analyze.js';
import type { Imports } from '../../../language/src/syntax/imports.js';
import { HotroomBuilder } from '../../../language/src/syntax/linking.js';
import type { HotroomServerSharedServices } from '../services.js';

/** Builds what is looked at first: after an edit of a catalogue the open files, then the many that merely use it. */
export class ServerBuilder extends HotroomBuilder {
    private readonly importsOf: () => Imports;
    private firstPart: Promise<void> | undefined;

    constructor(services: HotroomServerSharedServices) {
        super(services);
        this.importsOf = () => services.workspace.Imports;
    }

    /** What was worked out for a document holds no longer once it has to be linked again. */
    override resetToState<T extends AstNode>(document: LangiumDocument<T>, state: DocumentState): void {
        super.resetToState(document, state);
        if (state < DocumentState.Validated) forget(document);
    }

    protected override async buildDocuments(documents: LangiumDocument[], options: BuildOptions, token: Cancellation.CancellationToken): Promise<void> {
        const first = this.urgent(documents);
        if (first.length === 0 || first.length === documents.length) return super.buildDocuments(documents, options, token);
        const chosen = new Set(first);
        this.firstPart = super.buildDocuments(first, options, token);
        try {
            await this.firstPart;
        } finally {
            this.firstPart = undefined;
            this.currentState = DocumentState.Changed;
        }
        await super.buildDocuments(documents.filter(document => !chosen.has(document)), options, token);
    }

    /** Changed files, open files, and what the open ones use. */
    private urgent(documents: readonly LangiumDocument[]): LangiumDocument[] {
        const open = documents.filter(document => this.textDocuments?.get(document.uri) !== undefined);
        if (open.length === 0) return [];
        const used = new Set(open.flatMap(document => document.state >= DocumentState.Parsed ? [...this.importsOf().dependencies(document)] : []));
        return documents.filter(document => document.state < DocumentState.ComputedScopes || open.includes(document) || used.has(document.uri.toString()));
    }

    /** The workspace as a whole is not there before its second part is built. */
    protected override async awaitBuilderState(state: DocumentState, token: Cancellation.CancellationToken): Promise<void> {
        while (this.firstPart) await this.firstPart.catch(() => undefined);
        return super.awaitBuilderState(state, token);
    }
}
