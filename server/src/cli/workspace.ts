import { existsSync, realpathSync } from 'node:fs';
import { URI, type LangiumDocument } from 'langium';
import { NodeFileSystem } from 'langium/node';
import { analyze, type Analysis } from '../../../language/src/analyze.js';
import type { ReportedFinding } from '../../../language/src/core/finding.js';
import { jobModels, type ModelOfJob, type ModelOptions } from '../../../language/src/exports/job-models.js';
import { lowerFile } from '../../../language/src/model/file.js';
import type { FindingSources } from '../../../language/src/renderings/findings-text.js';
import type { Block } from '../../../language/src/model/block.js';
import { createHotroomServices, type HotroomServices, type HotroomSharedServices } from '../../../language/src/syntax/module.js';
import type { CalendarDate } from '../../../language/src/vocabulary/values.js';
import { unreadable } from './exit-codes.js';
import { displayName, isBelow, readText, shown, type JobFile } from './files.js';
import type { SettingsFiles } from './settings-files.js';

/** One file that was asked for, analysed. */
export interface CheckedFile {
    readonly name: string;
    readonly uri: string;
    /** Folder its `use`s may not leave. */
    readonly root: string;
    readonly analysis: Analysis;
    /** Catalogues of the file and of every file it uses. */
    readonly catalogues: readonly Block<'catalogue'>[];
    /** Its jobs as models that can be compared with others. */
    readonly models: () => readonly ModelOfJob[];
}

export interface Workspace {
    /** In the order asked for. */
    readonly files: readonly CheckedFile[];
    /** Files that were read only because another uses them. */
    readonly used: readonly CheckedFile[];
    readonly sources: FindingSources;
    /** Links that lead out of the root and were not followed, as sentences. */
    readonly remarks: readonly string[];
    /** Names of the settings files that hold for the files. */
    readonly settings: readonly string[];
    /** What is wrong with those. */
    readonly settingsFindings: readonly ReportedFinding[];
}

/** Under what files are analysed. */
export interface Circumstances { readonly settings: SettingsFiles; readonly today: CalendarDate }

/** Reads the files and all they use, each root with services of its own. They are analysed when somebody asks for what is in them. */
export async function openWorkspace(files: readonly JobFile[], cwd: string, circumstances: Circumstances): Promise<Workspace> {
    const realCwd = realpathSync(cwd);
    const texts = new Map<string, string>();
    const names = new Map<string, string>();
    const remarks: string[] = [];
    const checked = new Map<string, CheckedFile>();
    const used: CheckedFile[] = [];
    for (const root of new Set(files.map(file => file.root))) {
        const folder = new RootFolder(root, realCwd, circumstances);
        const own = files.filter(file => file.root === root);
        const documents = own.map(file => folder.add(URI.file(file.path), file.path, file.name));
        folder.addUsed();
        await folder.build();
        for (const [uri, name] of folder.names) names.set(uri, name);
        for (const [uri, text] of folder.texts) texts.set(uri, text);
        remarks.push(...folder.remarks);
        documents.forEach((document, index) => { const file = own[index]; if (file) checked.set(file.path, folder.check(document)); });
        const asked = new Set(documents.map(document => document.uri.toString()));
        used.push(...folder.documents().filter(document => !asked.has(document.uri.toString())).map(document => folder.check(document)));
    }
    const { settings } = circumstances;
    for (const { name, file } of settings.all) {
        names.set(file.uri, name);
        texts.set(file.uri, file.text);
    }
    const houseRules = (): ReadonlySet<string> => new Set([...checked.values(), ...used].flatMap(({ analysis }) => analysis.file.rules.flatMap(({ name }) => name?.value ?? [])));
    return {
        files: files.flatMap(file => checked.get(file.path) ?? []), used, remarks: [...remarks, ...settings.remarks],
        settings: settings.all.map(({ name }) => name), get settingsFindings() { return settings.findings(houseRules()); },
        sources: { textOf: uri => texts.get(uri), nameOf: uri => names.get(uri) ?? uri },
    };
}

class RootFolder {
    readonly names = new Map<string, string>();
    readonly texts = new Map<string, string>();
    readonly remarks: string[] = [];
    private readonly shared: HotroomSharedServices;
    private readonly hotroom: HotroomServices;

    constructor(private readonly root: string, private readonly cwd: string, private readonly circumstances: Circumstances) {
        ({ shared: this.shared, hotroom: this.hotroom } = createHotroomServices(NodeFileSystem));
        this.shared.workspace.Imports.roots = [URI.file(root)];
    }

    add(uri: URI, path: string, name: string): LangiumDocument {
        const text = readText(path, name);
        const document = this.parse(text, uri, name);
        this.shared.workspace.LangiumDocuments.addDocument(document);
        this.names.set(uri.toString(), name);
        this.texts.set(uri.toString(), text);
        return document;
    }

    /** Reading breaks only on what no person writes, such as brackets nested by the thousand. */
    private parse(text: string, uri: URI, name: string): LangiumDocument {
        try {
            return this.shared.workspace.LangiumDocumentFactory.fromString(text, uri);
        } catch (error) {
            if (error instanceof RangeError) throw unreadable(`Cannot read ${shown(name)}: it is nested too deeply.`);
            throw error;
        }
    }

    documents(): readonly LangiumDocument[] {
        return this.shared.workspace.LangiumDocuments.all.toArray();
    }

    /** Adds what the documents use, and what those use, as far as it lies in the root. A file that is not there is a finding, not a failure. */
    addUsed(): void {
        const queue = [...this.documents()];
        for (let document = queue.shift(); document; document = queue.shift()) {
            for (const { target } of this.shared.workspace.Imports.uses(document)) {
                if (target.kind !== 'file' || this.shared.workspace.LangiumDocuments.hasDocument(target.uri) || !existsSync(target.uri.fsPath)) continue;
                const name = displayName(target.uri.fsPath, this.cwd);
                const real = realpathSync(target.uri.fsPath);
                if (isBelow(this.root, real)) queue.push(this.add(target.uri, real, name));
                else if (!this.names.has(target.uri.toString())) {
                    this.names.set(target.uri.toString(), name);
                    this.remarks.push(`${name} is a link that leads out of the root and was not read.`);
                }
            }
        }
    }

    build(): Promise<void> {
        return this.shared.workspace.DocumentBuilder.build([...this.documents()]);
    }

    check(document: LangiumDocument): CheckedFile {
        const analyzeOther = (other: LangiumDocument): Analysis => this.analyze(other);
        const uri = document.uri.toString();
        // Settings are read at once: what is wrong with them is told whatever is asked.
        const options = this.optionsFor(document);
        // Asked for when somebody looks: a comparison wants the models alone.
        const analysis = (): Analysis => this.analyze(document);
        const others = (): readonly LangiumDocument[] => {
            const dependencies = this.shared.workspace.Imports.dependencies(document);
            return this.documents().filter(other => dependencies.has(other.uri.toString()));
        };
        return {
            name: this.names.get(uri) ?? uri, uri, root: this.root,
            get analysis() { return analysis(); },
            get catalogues() { return [...analysis().file.catalogues, ...others().flatMap(other => analyzeOther(other).file.catalogues)]; },
            models: () => jobModels(lowerFile(document, this.hotroom), options),
        };
    }

    private analyze(document: LangiumDocument): Analysis {
        return analyze(document, this.hotroom, this.optionsFor(document));
    }
    private optionsFor(document: LangiumDocument): ModelOptions & { readonly today: CalendarDate } {
        const { settings, today } = this.circumstances;
        const own = settings.of(document.uri.fsPath, this.root);
        return { today, ...(own && { settings: own }) };
    }
}
