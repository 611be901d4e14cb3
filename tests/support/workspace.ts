import { readdirSync, readFileSync } from 'node:fs';
import { URI, type LangiumDocument } from 'langium';
import { analyze, forget, type Analysis, type AnalyzeOptions } from '../../language/src/analyze.js';
import { createHotroomServices, type HotroomServices, type HotroomSharedServices } from '../../language/src/syntax/module.js';

const examples = new URL('../../examples/', import.meta.url);

/** Text of one file of examples/, by its path there. */
export const exampleText = (path: string): string => readFileSync(new URL(path, examples), 'utf8');
/** Paths of every job file below examples/, sorted. */
export const examplePaths = (): string[] =>
    readdirSync(examples, { recursive: true, encoding: 'utf8' }).map(path => path.replaceAll('\\', '/')).filter(path => path.endsWith('.hotroom')).sort();

/** Documents in memory under `memory:/jobs/`, each test with its own services, so that no test sees another's. */
export class TestWorkspace {
    readonly shared: HotroomSharedServices;
    readonly hotroom: HotroomServices;
    private readonly root = URI.parse('memory:/jobs');

    constructor() {
        ({ shared: this.shared, hotroom: this.hotroom } = createHotroomServices());
        this.shared.workspace.Imports.roots = [this.root];
    }

    uri(path: string): URI { return URI.parse(`memory:/jobs/${path}`); }

    add(path: string, text: string): LangiumDocument {
        const document = this.shared.workspace.LangiumDocumentFactory.fromString(text, this.uri(path));
        this.shared.workspace.LangiumDocuments.addDocument(document);
        return document;
    }
    remove(document: LangiumDocument): void {
        this.shared.workspace.LangiumDocuments.deleteDocument(document.uri);
        this.shared.workspace.IndexManager.remove(document.uri);
        forget(document);
    }
    async build(...documents: LangiumDocument[]): Promise<void> {
        await this.shared.workspace.DocumentBuilder.build(documents.length > 0 ? documents : this.shared.workspace.LangiumDocuments.all.toArray());
    }
    /** The two catalogues of examples/, at the same paths. */
    addCatalogues(): void {
        for (const path of ['catalogue/skerry.hotroom', 'catalogue/heaters.hotroom']) this.add(path, exampleText(path));
    }
    analyze(document: LangiumDocument, options: AnalyzeOptions = {}): Analysis {
        return analyze(document, this.hotroom, { onDefect: 'throw', ...options });
    }
}

/** The catalogues of examples/, read once for all texts of a test file; only the text itself is new each time. */
let catalogues: Promise<TestWorkspace> | undefined;
const withCatalogues = (): Promise<TestWorkspace> => catalogues ??= (async () => {
    const workspace = new TestWorkspace();
    workspace.addCatalogues();
    await workspace.build();
    return workspace;
})();
/** One text at a time: they all stand under one path. */
let queue: Promise<unknown> = Promise.resolve();

/** Analyses one text that may use the catalogues of examples/ and the files of `others`. */
export function analyzeText(text: string, options: AnalyzeOptions = {}, path = 'job.hotroom', others: Readonly<Record<string, string>> = {}): Promise<Analysis> {
    const result = queue.then(async () => {
        const isShared = Object.keys(others).length === 0 && !path.startsWith('catalogue/');
        const workspace = isShared ? await withCatalogues() : new TestWorkspace();
        if (!isShared) workspace.addCatalogues();
        for (const [other, content] of Object.entries(others)) workspace.add(other, content);
        const document = workspace.add(path, text);
        await workspace.build(...(isShared ? [document] : []));
        try {
            return workspace.analyze(document, options);
        } finally {
            if (isShared) workspace.remove(document);
        }
    });
    queue = result.catch(() => undefined);
    return result;
}
