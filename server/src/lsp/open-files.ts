import { URI, UriUtils, type FileSystemProvider, type LangiumDocuments } from 'langium';
import { DefaultDocumentUpdateHandler, type TextDocuments } from 'langium/lsp';
import { FileChangeType, type DidChangeWatchedFilesParams, type TextDocumentChangeEvent, type WorkspaceFolder } from 'vscode-languageserver';
import type { TextDocument } from 'langium';
import type { Imports } from '../../../language/src/syntax/imports.js';
import { settingsFileName } from '../../../language/src/settings/settings.js';
import type { HotroomServerSharedServices } from '../services.js';
import type { ProjectSettingsFiles } from './project-settings.js';

/** Follows what is opened, edited, closed and changed on disk, and fetches files that are used but lie outside the open folders. */
export class OpenFiles extends DefaultDocumentUpdateHandler {
    private readonly documents: LangiumDocuments;
    private readonly openTexts: TextDocuments<TextDocument>;
    private readonly files: FileSystemProvider;
    private readonly imports: Imports;
    private readonly log: (message: string) => void;
    private readonly settings: ProjectSettingsFiles;
    private hasLookedAtAll = false;

    constructor(services: HotroomServerSharedServices, log: (message: string) => void) {
        super(services);
        this.documents = services.workspace.LangiumDocuments;
        this.openTexts = services.workspace.TextDocuments;
        this.files = services.workspace.FileSystemProvider;
        this.imports = services.workspace.Imports;
        this.settings = services.workspace.ProjectSettings;
        this.log = log;
    }

    /** Rebuilds what changed; resolves when everything that hangs on it is up to date, or a later change has taken over. */
    async refresh(changed: readonly URI[], deleted: readonly URI[]): Promise<void> {
        await this.workspaceManager.ready;
        await this.workspaceLock.write(async token => {
            await this.documentBuilder.update([...changed], [...deleted], token);
            // Once for everything, later for what somebody looks at: asking a thousand files at every keystroke would be felt.
            const isFirst = !this.hasLookedAtAll;
            this.hasLookedAtAll = true;
            for (let missing = await this.usedFiles(isFirst); missing.length > 0; missing = await this.usedFiles(isFirst)) await this.documentBuilder.update(missing, [], token);
        });
    }

    protected override fireDocumentUpdate(changed: URI[], deleted: URI[]): void {
        this.refresh(changed, deleted).catch((error: unknown) => {
            this.log(`Bringing ${[...changed, ...deleted].map(uri => uri.toString()).join(', ')} up to date failed: ${error instanceof Error ? error.stack ?? error.message : String(error)}`);
        });
    }

    /** Checks files anew whose text stays: the day or the settings have changed. */
    checkAgain(files: readonly URI[]): void { this.fireDocumentUpdate([...files], []); }

    private readSettingsAgain(): void {
        const others = this.settings.readAgain();
        this.settings.tell();
        if (others.length === 0) return;
        this.refresh(others, []).then(() => { this.settings.changed(); }, (error: unknown) => { this.log(`Checking with the new settings failed: ${String(error)}`); });
    }

    /** Files on disk that some file uses and nobody has read. */
    private async usedFiles(ofAll: boolean): Promise<URI[]> {
        const missing = new Map<string, URI>();
        for (const document of this.documents.all) {
            if (!ofAll && this.openTexts.get(document.uri) === undefined && document.uri.scheme === 'file' && this.isInFolder(document.uri)) continue;
            for (const { target } of this.imports.uses(document)) {
                if (target.kind === 'file' && target.uri.scheme === 'file' && !this.documents.hasDocument(target.uri)) missing.set(target.uri.toString(), target.uri);
            }
        }
        const found = await Promise.all([...missing.values()].map(async uri => await this.isFile(uri) ? [uri] : []));
        return found.flat();
    }
    private isInFolder(uri: URI): boolean {
        return this.imports.roots.some(root => uri.toString().startsWith(`${root.toString().replace(/\/$/, '')}/`));
    }
    private async isFile(uri: URI): Promise<boolean> {
        try {
            return (await this.files.stat(uri)).isFile;
        } catch {
            return false; // not there, or not to be read: the finding about its `use` says so
        }
    }

    /** A closed file is what is on disk again; one that is nowhere else is gone. */
    didCloseDocument({ document }: TextDocumentChangeEvent<TextDocument>): void {
        const uri = URI.parse(document.uri);
        void this.isFile(uri).then(isThere => { if (isThere) this.fireDocumentUpdate([uri], []); else this.fireDocumentUpdate([], [uri]); });
    }

    /** What is open counts as the editor has it, whatever happens on disk. */
    override didChangeWatchedFiles(params: DidChangeWatchedFilesParams): void {
        // A folder that comes or goes may hold settings too.
        if (params.changes.some(({ uri, type }) => uri.endsWith(`/${settingsFileName}`) || type === FileChangeType.Deleted || UriUtils.extname(URI.parse(uri)) === '')) this.readSettingsAgain();
        const changes = params.changes.filter(({ uri, type }) => this.openTexts.get(uri) === undefined && !/\/(node_modules|\.[^/]+)\//.test(uri)
            && (type === FileChangeType.Deleted || uri.endsWith('.hotroom') || UriUtils.extname(URI.parse(uri)) === ''));
        if (changes.length > 0) super.didChangeWatchedFiles({ changes });
    }

    /** Folders were opened or closed: other files are in sight, and other paths may be used. */
    async changeFolders(added: readonly WorkspaceFolder[], removed: readonly WorkspaceFolder[]): Promise<void> {
        const gone = new Set(removed.map(({ uri }) => URI.parse(uri).toString()));
        const roots = this.imports.roots.filter(root => !gone.has(root.toString()));
        this.imports.roots = [...roots, ...added.map(({ uri }) => URI.parse(uri))];
        const found = (await Promise.all(added.map(({ uri }) => this.workspaceManager.searchFolder(URI.parse(uri))))).flat();
        const isKept = ({ uri }: { readonly uri: URI }): boolean =>
            this.openTexts.get(uri) !== undefined || this.isInFolder(uri);
        const known = this.documents.all.toArray();
        this.hasLookedAtAll = false;
        this.settings.readAgain();
        await this.refresh([...known.filter(isKept).map(({ uri }) => uri), ...found], known.filter(document => !isKept(document)).map(({ uri }) => uri));
    }
}
