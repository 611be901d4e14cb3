import {
    DefaultDocumentBuilder, DefaultLinker, DefaultNameProvider, DefaultScopeComputation, DefaultScopeProvider, EMPTY_SCOPE, MapScope, MultiMap, AstUtils,
    type AstNode, type AstNodeDescription, type CstNode, type LangiumDocument, type LocalSymbols, type ReferenceInfo, type Scope, type Cancellation,
} from 'langium';
import { isShared } from '../vocabulary/index.js';
import * as ast from './generated/ast.js';
import type { HotroomServices } from './module.js';
import type { Imports, SharedDescription } from './imports.js';
import { expectedKinds, nameOf, nameWord } from './words.js';

export class HotroomNames extends DefaultNameProvider {
    override getName(node: AstNode): string | undefined { return ast.isFact(node) ? nameOf(node) : undefined; }
    override getNameNode(node: AstNode): CstNode | undefined { return ast.isFact(node) ? nameWord(node)?.$cstNode : undefined; }
}

/** Files export shared blocks only; what is inside a job is seen in that job. */
export class HotroomSymbols extends DefaultScopeComputation {
    override async collectExportedSymbols(document: LangiumDocument, _token?: Cancellation.CancellationToken): Promise<AstNodeDescription[]> {
        const root = document.parseResult.value;
        if (!ast.isFile(root)) return [];
        return root.items.filter(item => item.key === 'catalogue').flatMap(catalogue => catalogue.body).flatMap(entry => {
            const name = nameOf(entry);
            if (name === undefined || !isShared(entry.key)) return [];
            return [{ ...this.descriptions.createDescription(entry, name, document), kind: entry.key } satisfies SharedDescription];
        });
    }
    override async collectLocalSymbols(): Promise<LocalSymbols> { return new MultiMap<AstNode, AstNodeDescription>(); }
}

export class HotroomScopes extends DefaultScopeProvider {
    private readonly imports: Imports;
    constructor(services: HotroomServices) {
        super(services);
        this.imports = services.shared.workspace.Imports;
    }

    override getScope(context: ReferenceInfo): Scope {
        const word = context.container;
        const kinds = ast.isWord(word) ? expectedKinds(word) : undefined;
        if (!kinds) return EMPTY_SCOPE;
        const document = AstUtils.getDocument(word);
        const found: AstNodeDescription[] = [];
        if (kinds.some(isShared)) {
            for (const uri of this.imports.visible(document)) {
                for (const same of this.imports.exportsOf(uri).values()) for (const description of same) if (kinds.includes(description.kind)) found.push(description);
            }
        }
        for (const fact of factsOfOwnJob(word)) {
            const name = nameOf(fact);
            if (name !== undefined && kinds.includes(fact.key)) found.push(this.descriptions.createDescription(fact, name, document));
        }
        return new MapScope(found);
    }
}

function factsOfOwnJob(word: AstNode): readonly ast.Fact[] {
    let top: AstNode | undefined = word;
    while (top && !(ast.isFact(top) && ast.isFile(top.$container))) top = top.$container;
    return ast.isFact(top) && top.key !== 'catalogue' ? top.body : [];
}

/** Links a word only where the vocabulary expects a reference. */
export class HotroomLinker extends DefaultLinker {
    protected override doLink(reference: ReferenceInfo, document: LangiumDocument): void {
        if (ast.isWord(reference.container) && !expectedKinds(reference.container)) return;
        super.doLink(reference, document);
    }
}

/** A changed file touches exactly the files that use it, directly or through others. */
export class HotroomBuilder extends DefaultDocumentBuilder {
    private readonly imports: () => Imports;
    constructor(services: ConstructorParameters<typeof DefaultDocumentBuilder>[0]) {
        super(services);
        this.imports = () => (services as unknown as { workspace: { Imports: Imports } }).workspace.Imports;
    }
    protected override shouldRelink(document: LangiumDocument, changed: Set<string>): boolean {
        const dependencies = this.imports().dependencies(document);
        for (const uri of changed) if (dependencies.has(uri)) return true;
        return false;
    }
}
