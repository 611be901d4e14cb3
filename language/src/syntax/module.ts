import { EmptyFileSystem, createDefaultCoreModule, createDefaultSharedCoreModule, inject, type DefaultSharedCoreModuleContext, type DeepPartial, type LangiumCoreServices, type LangiumSharedCoreServices, type Module } from 'langium';
import { HotroomGeneratedModule, HotroomGeneratedSharedModule } from './generated/module.js';
import { Imports } from './imports.js';
import { HotroomLexer } from './lexer.js';
import { HotroomBuilder, HotroomLinker, HotroomNames, HotroomReferences, HotroomScopes, HotroomSymbols } from './linking.js';
import { createReader } from './reader.js';

export interface HotroomSharedAdditions { readonly workspace: { readonly Imports: Imports } }
export interface HotroomServices extends LangiumCoreServices { readonly shared: LangiumSharedCoreServices & HotroomSharedAdditions }
export type HotroomSharedServices = LangiumSharedCoreServices & HotroomSharedAdditions;

/** What the language changes of Langium's shared services; every door (server, command line, tests) injects it. */
export const hotroomSharedModule: Module<HotroomSharedServices, HotroomSharedAdditions & DeepPartial<LangiumSharedCoreServices>> = {
    workspace: {
        Imports: services => new Imports(services),
        DocumentBuilder: services => new HotroomBuilder(services),
    },
};

/** What it changes of the services of one language. Findings come from `analyze`, so Langium's own validation reports nothing here. */
export const hotroomModule: Module<HotroomServices, DeepPartial<LangiumCoreServices>> = {
    parser: {
        Lexer: services => new HotroomLexer(services),
        LangiumParser: services => createReader(services),
    },
    references: {
        NameProvider: () => new HotroomNames(),
        ScopeComputation: services => new HotroomSymbols(services),
        ScopeProvider: services => new HotroomScopes(services),
        Linker: services => new HotroomLinker(services),
    },
    workspace: { ReferenceDescriptionProvider: services => new HotroomReferences(services) },
    validation: { DocumentValidator: () => ({ validateDocument: () => Promise.resolve([]) }) },
};

/** Services without any editor protocol, for the command line, tests and other programs. */
export function createHotroomServices(context: DefaultSharedCoreModuleContext = EmptyFileSystem): { readonly shared: HotroomSharedServices; readonly hotroom: HotroomServices } {
    const shared = inject(createDefaultSharedCoreModule(context), HotroomGeneratedSharedModule, hotroomSharedModule);
    const hotroom: HotroomServices = inject(createDefaultCoreModule({ shared }), HotroomGeneratedModule, hotroomModule);
    shared.ServiceRegistry.register(hotroom);
    return { shared, hotroom };
}
