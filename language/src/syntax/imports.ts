import { URI, UriUtils, WorkspaceCache, type AstNodeDescription, type LangiumDocument, type LangiumSharedCoreServices } from 'langium';
import * as ast from './generated/ast.js';
import { textOf, usePath } from './words.js';

/** One `use` and where it leads. */
export interface Use {
    readonly node: ast.Text;
    readonly written: string;
    /** Where the path leads, or why it leads nowhere. */
    readonly target: { readonly kind: 'file'; readonly uri: URI } | { readonly kind: 'outside' } | { readonly kind: 'not-a-path' };
}

/** A shared block another file may name. */
export interface SharedDescription extends AstNodeDescription { readonly kind: string }

/** Which files a file uses. A `use` is relative, stays inside the workspace and is not transitive for names, but is for what a job depends on. */
export class Imports {
    /** Folders a `use` may not leave; empty means the folder of the file itself. Set by whoever opens the workspace. */
    roots: readonly URI[] = [];
    private readonly exported: WorkspaceCache<string, ReadonlyMap<string, readonly SharedDescription[]>>;
    /** What each tree uses, for as long as it lives: an edit of one file asks all others what they depend on. */
    private readonly known = new WeakMap<ast.File, { readonly roots: readonly URI[]; readonly uri: string; readonly uses: readonly Use[]; readonly visible: readonly URI[] }>();

    constructor(private readonly services: LangiumSharedCoreServices) {
        this.exported = new WorkspaceCache(services);
    }

    uses(document: LangiumDocument): readonly Use[] {
        const root = document.parseResult.value;
        return ast.isFile(root) ? this.of(root, document.uri).uses : [];
    }
    private of(root: ast.File, own: URI): { readonly uses: readonly Use[]; readonly visible: readonly URI[] } {
        const uri = own.toString();
        let found = this.known.get(root);
        if (found?.roots !== this.roots || found.uri !== uri) {
            const uses = root.items.flatMap(item => {
                const node = usePath(item);
                return node ? [{ node, written: textOf(node), target: this.resolve(own, textOf(node)) }] : [];
            });
            const visible = new Map([[uri, own]]);
            for (const { target } of uses) if (target.kind === 'file') visible.set(target.uri.toString(), target.uri);
            this.known.set(root, found = { roots: this.roots, uri, uses, visible: [...visible.values()] });
        }
        return found;
    }

    private resolve(from: URI, path: string): Use['target'] {
        if (path === '' || /^[a-z][a-z0-9+.-]*:/i.test(path) || path.startsWith('/') || path.includes('\\') || path.includes('\0') || !path.endsWith('.hotroom')) return { kind: 'not-a-path' };
        const uri = UriUtils.resolvePath(UriUtils.dirname(from), path);
        const roots = this.roots.length > 0 ? this.roots : [UriUtils.dirname(from)];
        return roots.some(root => isBelow(root, uri)) ? { kind: 'file', uri } : { kind: 'outside' };
    }

    /** Files `document` can take names from, itself first, each once. */
    visible(document: LangiumDocument): readonly URI[] {
        const root = document.parseResult.value;
        return ast.isFile(root) ? this.of(root, document.uri).visible : [document.uri];
    }

    /** Every file the content of `document` can depend on, through any number of `use`s, without itself. */
    dependencies(document: LangiumDocument): ReadonlySet<string> {
        const found = new Set<string>();
        const visit = (from: LangiumDocument): void => {
            for (const uri of this.visible(from)) {
                const key = uri.toString();
                if (key === document.uri.toString() || found.has(key)) continue;
                found.add(key);
                const next = this.services.workspace.LangiumDocuments.getDocument(uri);
                if (next) visit(next);
            }
        };
        visit(document);
        return found;
    }

    /** The fact a description leads to, when its document is still there. */
    factAt(description: AstNodeDescription): ast.Fact | undefined {
        if (ast.isFact(description.node)) return description.node;
        const document = this.services.workspace.LangiumDocuments.getDocument(description.documentUri);
        const root = document?.parseResult.value;
        const node = root && this.services.ServiceRegistry.getServices(description.documentUri).workspace.AstNodeLocator.getAstNode(root, description.path);
        return ast.isFact(node) ? node : undefined;
    }

    /** Shared blocks of one file by name. */
    exportsOf(uri: URI): ReadonlyMap<string, readonly SharedDescription[]> {
        return this.exported.get(uri.toString(), () => {
            const byName = new Map<string, SharedDescription[]>();
            for (const description of this.services.workspace.IndexManager.allElements(ast.Fact.$type, new Set([uri.toString()]))) {
                if (!('kind' in description)) continue;
                const shared = description as SharedDescription;
                const same = byName.get(shared.name);
                if (same) same.push(shared); else byName.set(shared.name, [shared]);
            }
            return byName;
        });
    }
}

function isBelow(root: URI, uri: URI): boolean {
    const folder = root.path.endsWith('/') ? root.path : `${root.path}/`;
    return root.scheme === uri.scheme && root.authority === uri.authority && (uri.path.startsWith(folder));
}
