import { DocumentState, URI } from 'langium';
import { DefaultLanguageServer } from 'langium/lsp';
import { PositionEncodingKind, type InitializeParams, type InitializeResult } from 'vscode-languageserver';
import type { ClientAbilities, HotroomServerSharedServices } from '../services.js';
import { codeActionKinds } from './code-actions.js';
import { diagnosticProvider, wantsToAsk } from './pull-diagnostics.js';

/** Tells the editor what the server can do, beyond what Langium tells by itself, and learns what the editor can. */
export class HotroomLanguageServer extends DefaultLanguageServer {
    constructor(private readonly own: HotroomServerSharedServices, readonly client: ClientAbilities, readonly log: (message: string) => void) {
        super(own);
    }

    override async initialize(params: InitializeParams): Promise<InitializeResult> {
        const { textDocument, workspace } = params.capabilities;
        this.client.hasSnippets = textDocument?.completion?.completionItem?.snippetSupport ?? false;
        this.client.refreshesHints = workspace?.inlayHint?.refreshSupport ?? false;
        this.client.refreshesLenses = workspace?.codeLens?.refreshSupport ?? false;
        this.client.asksForDiagnostics = wantsToAsk(params);
        this.client.asksAgain = (params.initializationOptions as { readonly asksAgain?: unknown } | null | undefined)?.asksAgain === true;
        this.client.refreshesDiagnostics = workspace?.diagnostics?.refreshSupport ?? false;
        this.own.workspace.Imports.roots = (params.workspaceFolders ?? []).map(({ uri }) => URI.parse(uri));
        const result = await super.initialize(params);
        this.refreshAfterBuilds();
        return result;
    }

    protected override buildInitializeResult(params: InitializeParams): InitializeResult {
        const { capabilities } = super.buildInitializeResult(params);
        return {
            serverInfo: { name: 'hotroom' },
            capabilities: {
                ...capabilities,
                positionEncoding: PositionEncodingKind.UTF16,
                codeActionProvider: { codeActionKinds: [...codeActionKinds] },
                selectionRangeProvider: true,
                ...(wantsToAsk(params) && { diagnosticProvider }),
                executeCommandProvider: { commands: this.own.lsp.ExecuteCommandHandler?.commands ?? [], workDoneProgress: true },
                workspace: { ...capabilities.workspace, workspaceFolders: { supported: true, changeNotifications: true } },
            },
        };
    }

    /** An edit of a catalogue, or of a setting, changes what stands in other open files, which their editors would not ask for again by themselves. */
    private refreshAfterBuilds(): void {
        const { ConfigurationProvider, DocumentBuilder, TextDocuments } = this.own.workspace;
        const { Connection } = this.own.lsp;
        const report = (error: unknown): void => { this.log(`The editor did not refresh: ${String(error)}`); };
        const refreshHints = (): void => { if (this.client.refreshesHints) Connection?.languages.inlayHint.refresh().catch(report); };
        const refreshLenses = (): void => { if (this.client.refreshesLenses) Connection?.sendRequest('workspace/codeLens/refresh').catch(report); };
        DocumentBuilder.onBuildPhase(DocumentState.Validated, built => {
            if (built.filter(({ uri }) => TextDocuments.get(uri) !== undefined).length < 2) return;
            refreshHints();
            refreshLenses();
        });
        this.own.workspace.ProjectSettings.onChange(() => { refreshHints(); refreshLenses(); });
        ConfigurationProvider.onConfigurationSectionUpdate(refreshHints);
    }
}
