import {
    AstUtils, Cancellation, DefaultDocumentBuilder, DefaultLinker, DefaultNameProvider, DefaultReferenceDescriptionProvider, DefaultScopeComputation, DefaultScopeProvider, EMPTY_SCOPE,
    MultiMap, interruptAndCheck, stream,
    type AstNode, type AstNodeDescription, type AstNodeDescriptionProvider, type CstNode, type LangiumDocument, type LocalSymbols, type ReferenceDescription, type ReferenceInfo, type Scope, type Stream,
} from 'langium';
import { isShared, propertiesOf } from '../vocabulary/index.js';
import * as ast from './generated/ast.js';
import type { HotroomServices } from './module.js';
import type { Imports, SharedDescription } from './imports.js';
import { baseTermOf, expectedKinds, nameOf, nameWord, wordsOf } from './words.js';

export class HotroomNames extends DefaultNameProvider {
    override getName(node: AstNode): string | undefined { return ast.isFact(node) ? nameOf(node) : undefined; }
    override getNameNode(node: AstNode): CstNode | undefined { return ast.isFact(node) ? nameWord(node)?.$cstNode : undefined; }
}

/** Files export shared blocks only; what is inside a job is seen in that job. */
export class HotroomSymbols extends DefaultScopeComputation {
    override async collectExportedSymbols(document: LangiumDocument, _token?: Cancellation.CancellationToken): Promise<AstNodeDescription[]> {
        const root = document.parseResult.value;
        if (!ast.isFile(root)) return [];
        return root.items.flatMap(item => item.key === 'catalogue' ? item.body : item.key === 'series' ? [item] : []).flatMap(entry => {
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
        return kinds ? new NamesInSight(kinds, word, this.imports, this.descriptions) : EMPTY_SCOPE;
    }
}

/**
 * The names of some kinds that a word can see: those of its own job, then those of the files it uses and of its own. One name is looked up without
 * listing the others.
 */
class NamesInSight implements Scope {
    constructor(private readonly kinds: readonly string[], private readonly word: AstNode, private readonly imports: Imports, private readonly descriptions: AstNodeDescriptionProvider) {}

    getElement(name: string): AstNodeDescription | undefined {
        const own = this.ownFacts().findLast(fact => this.kinds.includes(fact.key) && nameOf(fact) === name);
        const document = AstUtils.getDocument(this.word);
        if (own) return this.descriptions.createDescription(own, name, AstUtils.getDocument(own));
        if (!this.kinds.some(isShared)) return undefined;
        for (const uri of this.imports.visible(document).toReversed()) {
            const found = this.imports.exportsOf(uri).get(name)?.findLast(({ kind }) => this.kinds.includes(kind));
            if (found) return found;
        }
        return undefined;
    }
    getElements(name: string): Stream<AstNodeDescription> {
        return stream([this.getElement(name) ?? []].flat());
    }
    getAllElements(): Stream<AstNodeDescription> {
        const document = AstUtils.getDocument(this.word);
        const names = new Set<string>();
        if (this.kinds.some(isShared)) {
            for (const uri of this.imports.visible(document)) {
                for (const [name, same] of this.imports.exportsOf(uri)) if (same.some(({ kind }) => this.kinds.includes(kind))) names.add(name);
            }
        }
        for (const fact of this.ownFacts()) {
            const name = nameOf(fact);
            if (name !== undefined && this.kinds.includes(fact.key)) names.add(name);
        }
        return stream([...names].flatMap(name => this.getElement(name) ?? []));
    }

    /** Facts of the job or series the word stands in: those of the series it is made from first, those of the variant the word stands in last. */
    private ownFacts(): readonly ast.Fact[] {
        let top: AstNode | undefined = this.word;
        let variant: ast.Fact | undefined;
        while (top && !(ast.isFact(top) && ast.isFile(top.$container))) {
            if (ast.isFact(top) && top.key === 'variant') variant = top;
            top = top.$container;
        }
        if (!ast.isFact(top) || top.key === 'catalogue') return [];
        return [...this.baseFacts(top, new Set()), ...top.body, ...variant?.body ?? []];
    }
    private baseFacts(fact: ast.Fact, seen: Set<ast.Fact>): readonly ast.Fact[] {
        const base = baseTermOf(fact);
        // The name of the series itself is looked up among shared names only.
        if (!base || seen.has(fact) || base.word === this.word || this.kinds.includes('series')) return [];
        seen.add(fact);
        const document = AstUtils.getDocument(fact);
        for (const uri of this.imports.visible(document).toReversed()) {
            const found = this.imports.exportsOf(uri).get(base.word.ref.$refText)?.findLast(({ kind }) => kind === 'series');
            const node = found && this.imports.factAt(found);
            if (node) return [...this.baseFacts(node, seen), ...node.body];
        }
        return [];
    }
}

/** Links a word only where the vocabulary expects a reference: the first word of a value, or what a choice gives in its place. */
export class HotroomLinker extends DefaultLinker {
    override async link(document: LangiumDocument, token = Cancellation.CancellationToken.None): Promise<void> {
        await interruptAndCheck(token);
        const root = document.parseResult.value;
        if (ast.isFile(root)) this.linkFacts(root.items, document, 'file');
    }
    private linkFacts(facts: readonly ast.Fact[], document: LangiumDocument, context: string): void {
        const properties = propertiesOf(context);
        for (const fact of facts) {
            if (properties.get(fact.key)?.property.type.refersTo) {
                for (const { terms: [value] } of fact.phrases) for (const word of wordsOf(value)) this.doLink({ container: word, property: 'ref', reference: word.ref }, document);
            }
            const base = baseTermOf(fact)?.word;
            if (base) this.doLink({ container: base, property: 'ref', reference: base.ref }, document);
            if (fact.body.length > 0) this.linkFacts(fact.body, document, fact.key);
        }
    }
    protected override doLink(reference: ReferenceInfo, document: LangiumDocument): void {
        if (ast.isWord(reference.container) && !expectedKinds(reference.container)) return;
        super.doLink(reference, document);
    }
}

/** Nothing asks an index of references: names are found by reading trees, and what a changed file touches by who uses it. */
export class HotroomReferences extends DefaultReferenceDescriptionProvider {
    override createDescriptions(): Promise<ReferenceDescription[]> { return Promise.resolve([]); }
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
