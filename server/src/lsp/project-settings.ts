import { DocumentState, TextDocument, URI, UriUtils, type FileSystemProvider, type LangiumDocument, type LangiumDocuments } from 'langium';
import type { Diagnostic } from 'vscode-languageserver';
import type { Imports } from '../../../language/src/syntax/imports.js';
import * as ast from '../../../language/src/syntax/generated/ast.js';
import { nameOf } from '../../../language/src/syntax/words.js';
import { unknownNames } from '../../../language/src/settings/names-in-settings.js';
import { readSettings, unreadableSettings, type SettingsFile } from '../../../language/src/settings/read-settings.js';
import { resolveSettings } from '../../../language/src/settings/resolve.js';
import { settingsFileName, type ProjectSettings } from '../../../language/src/settings/settings.js';
import type { HotroomServerSharedServices } from '../services.js';
import { Places } from '../to-lsp.js';
import { toDiagnostic } from './diagnostics.js';

/** One settings file as it lies on disk. */
interface ReadFile { readonly settings: SettingsFile; readonly text: TextDocument }

/** Finds and reads the settings files above job files, and tells the editor what is wrong with them. They count as they are saved. */
export class ProjectSettingsFiles {
    private readonly documents: LangiumDocuments;
    private readonly files: FileSystemProvider;
    private readonly imports: () => Imports;
    private readonly send: (uri: string, diagnostics: Diagnostic[]) => void;
    private readonly known = new Map<string, ReadFile | undefined>();
    private readonly resolved = new Map<string, ProjectSettings | undefined>();
    private readonly houseRules = new Map<string, readonly string[]>();
    private readonly sent = new Map<string, string>();
    private readonly listeners: (() => void)[] = [];

    constructor(services: HotroomServerSharedServices, private readonly handbook: (rule: string) => string | undefined) {
        this.documents = services.workspace.LangiumDocuments;
        this.files = services.workspace.FileSystemProvider;
        this.imports = () => services.workspace.Imports;
        this.send = (uri, diagnostics) => { void services.lsp.Connection?.sendDiagnostics({ uri, diagnostics }); };
        services.workspace.DocumentBuilder.onBuildPhase(DocumentState.Validated, built => { for (const document of built) this.houseRules.set(document.uri.toString(), houseRulesOf(document)); this.tell(); });
        services.workspace.DocumentBuilder.onUpdate((_, deleted) => { for (const uri of deleted) { this.houseRules.delete(uri.toString()); this.resolved.delete(uri.toString()); } });
    }

    /** What holds for a job file; the nearest place wins, up to the folder that is open. */
    of(uri: URI): ProjectSettings | undefined {
        if (uri.scheme !== 'file') return undefined;
        const key = uri.toString();
        if (!this.resolved.has(key)) {
            this.resolved.set(key, resolveSettings(this.above(uri).flatMap(folder => {
                const file = this.read(UriUtils.joinPath(folder, settingsFileName));
                return file ? [{ file: file.settings, path: uri.path.slice(folder.path.replace(/\/$/, '').length + 1) }] : [];
            })));
        }
        return this.resolved.get(key);
    }

    text(uri: string): TextDocument | undefined { return this.known.get(uri)?.text; }
    onChange(listener: () => void): void { this.listeners.push(listener); }
    changed(): void { for (const listener of this.listeners) listener(); }

    /** Reads everything anew. @returns the job files that other settings hold for than before */
    readAgain(): readonly URI[] {
        const before = new Map(this.resolved);
        this.known.clear();
        this.resolved.clear();
        return this.documents.all.filter(({ uri }) => before.has(uri.toString()) && before.get(uri.toString())?.key !== this.of(uri)?.key).map(({ uri }) => uri).toArray();
    }

    /** What is wrong with every settings file in use, by its address. */
    diagnostics(): ReadonlyMap<string, Diagnostic[]> {
        const names = new Set([...this.houseRules.values()].flat());
        const places = new Places(this.documents, uri => this.text(uri));
        return new Map([...this.known].flatMap(([uri, file]) => file ? [[uri, [...file.settings.findings, ...unknownNames(file.settings, names)].map(finding => toDiagnostic(finding, uri, places, this.handbook))] as const] : []));
    }

    /** Tells the editor what is wrong, where it differs from what it was told. */
    tell(): void {
        const now = this.diagnostics();
        for (const uri of new Set([...this.sent.keys(), ...now.keys()])) {
            const diagnostics = now.get(uri) ?? [];
            const text = JSON.stringify(diagnostics);
            if ((this.sent.get(uri) ?? '[]') !== text) this.send(uri, diagnostics);
            if (now.has(uri)) this.sent.set(uri, text); else this.sent.delete(uri);
        }
    }

    /** The folder of a file and those it lies in, up to the open folder; of a file outside of those its own folder alone. */
    private above(uri: URI): readonly URI[] {
        const root = this.imports().roots.map(one => one.toString().replace(/\/$/, '')).filter(one => uri.toString().startsWith(`${one}/`)).sort((a, b) => a.length - b.length)[0];
        const folders = [UriUtils.dirname(uri)];
        for (let at = folders[0]; root !== undefined && at && at.toString().length > root.length; ) folders.push(at = UriUtils.dirname(at));
        return folders;
    }

    private read(uri: URI): ReadFile | undefined {
        const key = uri.toString();
        if (!this.known.has(key)) this.known.set(key, this.readNew(uri));
        return this.known.get(key);
    }
    private readNew(uri: URI): ReadFile | undefined {
        const key = uri.toString();
        const read = (settings: SettingsFile): ReadFile => ({ settings, text: TextDocument.create(key, 'json', 0, settings.text) });
        try {
            if (!this.files.existsSync(uri) || !this.files.statSync(uri).isFile) return undefined;
            return read(readSettings(this.files.readFileSync(uri).replace(/^\ufeff/, ''), key));
        } catch (error) {
            return read(unreadableSettings(key, `This file cannot be read: ${error instanceof Error ? error.message : String(error)}.`));
        }
    }
}

/** Names of the house rules of a file, from its text alone. */
function houseRulesOf({ parseResult: { value } }: LangiumDocument): readonly string[] {
    if (!ast.isFile(value)) return [];
    return value.items.flatMap(item => item.key === 'rule' ? [item] : item.key === 'catalogue' ? item.body.filter(({ key }) => key === 'rule') : []).flatMap(rule => nameOf(rule) ?? []);
}
