import { URI, type LangiumDocument } from 'langium';
import { jobModels, type ModelOfJob } from '../../../language/src/exports/job-models.js';
import { lowerFile } from '../../../language/src/model/file.js';
import type { FindingSources } from '../../../language/src/renderings/findings-text.js';
import { readSettings, type SettingsFile } from '../../../language/src/settings/read-settings.js';
import { resolveSettings, type SettingsAbove } from '../../../language/src/settings/resolve.js';
import { settingsFileName, type ProjectSettings } from '../../../language/src/settings/settings.js';
import { createHotroomServices } from '../../../language/src/syntax/module.js';
import type { CalendarDate } from '../../../language/src/vocabulary/values.js';

export interface RevisionOptions {
    readonly today: CalendarDate;
    /** Settings of a file instead of those that lie in the revision. */
    readonly settingsOf?: (path: string) => ProjectSettings | undefined;
    /** Makes text of bytes, or fails with the name. */
    readonly textOf: (bytes: Uint8Array, name: string) => string;
    /** Fails with the name of a file that is nested too deeply to be read. */
    readonly tooDeep: (name: string) => Error;
}

const root = '/top';
const uriOf = (path: string): URI => URI.from({ scheme: 'revision', path: `${root}/${path}` });
const pathOf = (uri: string): string => URI.parse(uri).path.slice(root.length + 1);

/** Paths of the settings that may hold for a file, the nearest first. */
function settingsPaths(path: string): readonly string[] {
    const folders = path.split('/').slice(0, -1);
    return [...folders.keys(), folders.length].reverse().map(count => [...folders.slice(0, count), settingsFileName].join('/'));
}

/** One file with its jobs, and every path they hang on, there or not. */
export interface OpenedFile { readonly path: string; readonly models: readonly ModelOfJob[]; readonly reaches: readonly string[] }

/** Job files of a revision with the catalogues and settings they had, in memory; the files of the folder are not touched. */
export class RevisionWorkspace {
    private readonly services = createHotroomServices();
    private readonly opened = new Map<string, OpenedFile>();
    private readonly settings = new Map<string, SettingsFile | undefined>();

    /**
     * @param files job and settings files by their path from the top
     * @param name of the revision, which stands before every path
     */
    constructor(private readonly files: ReadonlyMap<string, Uint8Array>, private readonly name: string, readonly options: RevisionOptions) {
        this.services.shared.workspace.Imports.roots = [URI.from({ scheme: 'revision', path: root })];
    }

    readonly sources: FindingSources = {
        textOf: uri => this.textIn(pathOf(uri)),
        nameOf: uri => this.shownName(pathOf(uri)),
    };

    /** Where the file of an address lies in its repository. */
    readonly pathOf = pathOf;
    /** Text of a file, as its places are counted in. */
    textIn(path: string): string | undefined { return this.files.has(path) ? this.text(path) : undefined; }
    has(path: string): boolean { return this.files.has(path); }
    get paths(): readonly string[] { return [...this.files.keys()]; }

    /**
     * Models of the jobs of some files, with all those files use.
     * @param like another revision whose models are taken where a file, all it uses and its settings are the same there
     */
    async models(paths: readonly string[], like?: RevisionWorkspace): Promise<readonly OpenedFile[]> {
        const { DocumentBuilder, Imports, LangiumDocuments } = this.services.shared.workspace;
        const found = new Map(paths.flatMap(path => { const same = like?.opened.get(path); return like && same && this.holdsSame(same, like) ? [[path, same] as const] : []; }));
        const asked = paths.filter(path => !found.has(path)).map(path => ({ path, document: this.document(path) }));
        const queue = asked.map(({ document }) => document);
        for (let document = queue.shift(); document; document = queue.shift()) {
            for (const { target } of Imports.uses(document)) {
                if (target.kind !== 'file' || LangiumDocuments.hasDocument(target.uri)) continue;
                const path = pathOf(target.uri.toString());
                if (this.files.has(path)) queue.push(this.document(path));
            }
        }
        await DocumentBuilder.build([...LangiumDocuments.all]);
        for (const { path, document } of asked) {
            const settings = this.options.settingsOf ? this.options.settingsOf(path) : this.settingsOf(path);
            found.set(path, {
                path, models: jobModels(lowerFile(document, this.services.hotroom), { today: this.options.today, ...(settings && { settings }) }),
                reaches: [path, ...[...Imports.dependencies(document)].map(pathOf), ...settingsPaths(path)],
            });
        }
        const all = paths.flatMap(path => found.get(path) ?? []);
        for (const one of all) this.opened.set(one.path, one);
        return all;
    }

    /** Whether everything a file's models hang on is the same here. Contents that are the same are the same array: they are read once. */
    private holdsSame({ reaches }: OpenedFile, like: RevisionWorkspace): boolean {
        return this.options === like.options && reaches.every(path => this.files.get(path) === like.files.get(path));
    }

    private document(path: string): LangiumDocument {
        return this.services.shared.workspace.LangiumDocuments.getDocument(uriOf(path)) ?? this.add(path);
    }

    private add(path: string): LangiumDocument {
        const { LangiumDocumentFactory, LangiumDocuments } = this.services.shared.workspace;
        const uri = uriOf(path);
        const text = this.text(path);
        let document: LangiumDocument;
        try {
            document = LangiumDocumentFactory.fromString(text, uri);
        } catch (error) {
            // What no person writes, such as brackets nested by the thousand.
            throw error instanceof RangeError ? this.options.tooDeep(this.shownName(path)) : error;
        }
        LangiumDocuments.addDocument(document);
        return document;
    }

    /** What holds for a file: the settings files above it, the nearest first. */
    private settingsOf(path: string): ProjectSettings | undefined {
        return resolveSettings(settingsPaths(path).flatMap((one): SettingsAbove[] => {
            const file = this.settingsAt(one);
            return file ? [{ file, path: path.slice(one.length - settingsFileName.length) }] : [];
        }));
    }
    private settingsAt(path: string): SettingsFile | undefined {
        if (!this.settings.has(path)) this.settings.set(path, this.files.has(path) ? readSettings(this.text(path), uriOf(path).toString()) : undefined);
        return this.settings.get(path);
    }

    private text(path: string): string { return this.options.textOf(this.files.get(path) ?? new Uint8Array(), this.shownName(path)); }
    private shownName(path: string): string { return `${this.name}:${path}`; }
}
