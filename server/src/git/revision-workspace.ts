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

/** Job files of a revision with the catalogues and settings they had, in memory; the files of the folder are not touched. */
export class RevisionWorkspace {
    private readonly services = createHotroomServices();
    private readonly texts = new Map<string, string>();
    private readonly settings = new Map<string, SettingsFile | undefined>();

    /**
     * @param files job and settings files by their path from the top
     * @param name of the revision, which stands before every path
     */
    constructor(private readonly files: ReadonlyMap<string, Uint8Array>, private readonly name: string, private readonly options: RevisionOptions) {
        this.services.shared.workspace.Imports.roots = [URI.from({ scheme: 'revision', path: root })];
    }

    readonly sources: FindingSources = {
        textOf: uri => this.texts.get(uri),
        nameOf: uri => this.shownName(URI.parse(uri).path.slice(root.length + 1)),
    };

    /** Models of the jobs of some files, with all those files use. */
    async models(paths: readonly string[]): Promise<readonly { readonly path: string; readonly models: readonly ModelOfJob[] }[]> {
        const { DocumentBuilder, Imports, LangiumDocuments } = this.services.shared.workspace;
        const asked = paths.map(path => ({ path, document: this.add(path) }));
        const queue = asked.map(({ document }) => document);
        for (let document = queue.shift(); document; document = queue.shift()) {
            for (const { target } of Imports.uses(document)) {
                if (target.kind !== 'file' || LangiumDocuments.hasDocument(target.uri)) continue;
                const path = target.uri.path.slice(root.length + 1);
                if (this.files.has(path)) queue.push(this.add(path));
            }
        }
        await DocumentBuilder.build([...LangiumDocuments.all]);
        return asked.map(({ path, document }) => {
            const settings = this.options.settingsOf ? this.options.settingsOf(path) : this.settingsOf(path);
            return { path, models: jobModels(lowerFile(document, this.services.hotroom), { today: this.options.today, ...(settings && { settings }) }) };
        });
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
        this.texts.set(uri.toString(), text);
        return document;
    }

    /** What holds for a file: the settings files above it, the nearest first. */
    private settingsOf(path: string): ProjectSettings | undefined {
        const folders = path.split('/').slice(0, -1);
        return resolveSettings([...folders.keys(), folders.length].reverse().flatMap((count): SettingsAbove[] => {
            const file = this.settingsIn(folders.slice(0, count).join('/'));
            return file ? [{ file, path: path.split('/').slice(count).join('/') }] : [];
        }));
    }
    private settingsIn(folder: string): SettingsFile | undefined {
        const path = folder === '' ? settingsFileName : `${folder}/${settingsFileName}`;
        if (!this.settings.has(path)) this.settings.set(path, this.files.has(path) ? readSettings(this.text(path), uriOf(path).toString()) : undefined);
        return this.settings.get(path);
    }

    private text(path: string): string { return this.options.textOf(this.files.get(path) ?? new Uint8Array(), this.shownName(path)); }
    private shownName(path: string): string { return `${this.name}:${path}`; }
}
