import { inject, type Module } from 'langium';
import { createDefaultModule, createDefaultSharedModule, type DefaultSharedModuleContext, type LangiumServices, type LangiumSharedServices, type PartialLangiumLSPServices, type PartialLangiumSharedServices } from 'langium/lsp';
import type { analyze } from '../../language/src/analyze.js';
import type { IntegerSolver } from '../../language/src/engines/stock/integer-solver.js';
import { HotroomGeneratedModule, HotroomGeneratedSharedModule } from '../../language/src/syntax/generated/module.js';
import { hotroomModule, hotroomSharedModule, type HotroomServices, type HotroomSharedAdditions } from '../../language/src/syntax/module.js';
import { HotroomCallHierarchy } from './lsp/call-hierarchy.js';
import { HotroomCodeActions } from './lsp/code-actions.js';
import { HotroomCodeLenses } from './lsp/code-lenses.js';
import { HotroomCompletion } from './lsp/completion.js';
import { Commands } from './lsp/commands.js';
import { HotroomDefinition } from './lsp/definition.js';
import { HotroomValidator } from './lsp/diagnostics.js';
import { ServerBuilder } from './lsp/document-builder.js';
import { HotroomDocumentLinks } from './lsp/document-links.js';
import { DocumentReader } from './lsp/document-reader.js';
import { FileRenames } from './lsp/file-renames.js';
import { HotroomFolding } from './lsp/folding.js';
import { HotroomFormatter } from './lsp/formatting.js';
import { createGuardedParser } from './lsp/guarded-parser.js';
import { HotroomHover } from './lsp/hover.js';
import { HotroomInlayHints } from './lsp/inlay-hints.js';
import { HotroomLanguageServer } from './lsp/language-server.js';
import { OpenFiles } from './lsp/open-files.js';
import { HotroomDocumentHighlights, HotroomReferences } from './lsp/references.js';
import { ProjectSettingsFiles } from './lsp/project-settings.js';
import { HotroomRename } from './lsp/rename.js';
import { SafeDocumentFactory } from './lsp/safe-document-factory.js';
import { HotroomSemanticTokens } from './lsp/semantic-tokens.js';
import { HotroomSignatureHelp } from './lsp/signature-help.js';
import { Settings } from './lsp/settings.js';
import { HotroomDocumentSymbols, HotroomWorkspaceSymbols } from './lsp/symbols.js';
import { Places } from './to-lsp.js';

/** What the editor said it can do, as far as answers depend on it. */
export interface ClientAbilities { hasSnippets: boolean; refreshesHints: boolean; refreshesLenses: boolean; asksForDiagnostics: boolean; refreshesDiagnostics: boolean; asksAgain: boolean }

/** Our own services of the server, beside Langium's. */
export interface EditingServices {
    readonly editing: {
        readonly Reader: DocumentReader;
        readonly Places: Places;
        readonly Settings: Settings;
        readonly client: ClientAbilities;
        readonly log: (message: string) => void;
        readonly handbook: (rule: string) => string | undefined;
        readonly analyze: typeof analyze | undefined;
    };
}
/** Our own shared services of the server: the settings of projects, and the clock. */
export interface ProjectServices {
    readonly workspace: { readonly ProjectSettings: ProjectSettingsFiles; readonly now: () => Date };
}
export type HotroomServerSharedServices = LangiumSharedServices & HotroomSharedAdditions & ProjectServices;
export type HotroomServerServices = Omit<LangiumServices, 'shared'> & EditingServices & { readonly shared: HotroomServerSharedServices };

export interface ServerOptions {
    /** Where lines for the log go. */
    readonly log?: (message: string) => void;
    /** Address of a rule's page in the handbook, when it has one. */
    readonly handbook?: (rule: string) => string | undefined;
    /** Solver of the stock plan; without one the quick plan stands. */
    readonly solver?: IntegerSolver;
    /** Takes the place of `analyze`, so that a test can make it fail. */
    readonly analyze?: typeof analyze;
    /** The clock, for waivers with an end. */
    readonly now?: () => Date;
}

/** All services of the language server over one connection, or over none, for tests. */
export function createServerServices(context: DefaultSharedModuleContext, options: ServerOptions = {}): { readonly shared: HotroomServerSharedServices; readonly hotroom: HotroomServerServices } {
    const log = options.log ?? (() => undefined);
    const sharedAdditions: Module<HotroomServerSharedServices, PartialLangiumSharedServices & ProjectServices> = {
        lsp: {
            LanguageServer: services => new HotroomLanguageServer(services, client, log),
            DocumentUpdateHandler: services => new OpenFiles(services, log),
            WorkspaceSymbolProvider: services => new HotroomWorkspaceSymbols(services),
            FileOperationHandler: services => new FileRenames(services),
            ExecuteCommandHandler: services => new Commands(services, options.solver),
        },
        workspace: {
            DocumentBuilder: services => new ServerBuilder(services),
            LangiumDocumentFactory: services => new SafeDocumentFactory(services),
            ProjectSettings: services => new ProjectSettingsFiles(services, options.handbook ?? (() => undefined)),
            now: () => options.now ?? (() => new Date()),
        },
    };
    const client: ClientAbilities = { hasSnippets: false, refreshesHints: false, refreshesLenses: false, asksForDiagnostics: false, refreshesDiagnostics: false, asksAgain: false };
    const own: Module<HotroomServerServices, EditingServices & PartialLangiumLSPServices> = {
        editing: {
            Reader: services => new DocumentReader(services), Places: services => new Places(services.shared.workspace.LangiumDocuments, uri => services.shared.workspace.ProjectSettings.text(uri)), Settings: services => new Settings(services),
            client: () => client, log: () => log, handbook: () => options.handbook ?? (() => undefined), analyze: () => options.analyze,
        },
        lsp: {
            HoverProvider: services => new HotroomHover(services), CompletionProvider: services => new HotroomCompletion(services),
            CodeActionProvider: services => new HotroomCodeActions(services), DefinitionProvider: services => new HotroomDefinition(services),
            ReferencesProvider: services => new HotroomReferences(services), DocumentHighlightProvider: services => new HotroomDocumentHighlights(services),
            RenameProvider: services => new HotroomRename(services), DocumentSymbolProvider: services => new HotroomDocumentSymbols(services),
            Formatter: services => new HotroomFormatter(services), FoldingRangeProvider: services => new HotroomFolding(services),
            DocumentLinkProvider: services => new HotroomDocumentLinks(services), SemanticTokenProvider: services => new HotroomSemanticTokens(services), SignatureHelp: services => new HotroomSignatureHelp(services),
            CallHierarchyProvider: services => new HotroomCallHierarchy(services),
            InlayHintProvider: services => new HotroomInlayHints(services), CodeLensProvider: services => new HotroomCodeLenses(services),
        },
    };
    const guards: Module<HotroomServerServices, object> = {
        parser: { LangiumParser: (services: HotroomServerServices) => createGuardedParser(services) },
        validation: { DocumentValidator: (services: HotroomServerServices) => new HotroomValidator(services) },
    };
    const shared = inject(createDefaultSharedModule(context), HotroomGeneratedSharedModule, hotroomSharedModule as object, sharedAdditions as object) as unknown as HotroomServerSharedServices;
    const hotroom = inject(createDefaultModule({ shared }), HotroomGeneratedModule, hotroomModule as Module<HotroomServices, object>, own as object, guards) as unknown as HotroomServerServices;
    shared.ServiceRegistry.register(hotroom);
    return { shared, hotroom };
}
