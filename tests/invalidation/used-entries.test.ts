import fc from 'fast-check';
import { EmptyFileSystemProvider, URI, type FileSystemProvider } from 'langium';
import { beforeEach, expect, test } from 'vitest';
import { jobCounts } from '../../language/src/analysis/kept-jobs.js';
import { createServerServices } from '../../server/src/services.js';
import { writeFile } from '../properties/job-text.js';
import { fileOf, randomJob } from '../properties/random-job.js';
import { exampleText, examplePaths, TestWorkspace } from '../support/workspace.js';

/** Closed files that share the catalogues of examples/, as the server keeps them. */
const skerry = 'catalogue/skerry.hotroom';
const jobs = fc.sample(randomJob, { seed: 41, numRuns: 5 }).map(({ job }, i): [string, string] => [`job-${i}.hotroom`, writeFile(fileOf(job), 'in', 'compact')]);
const houseRule = `use "${skerry}"\n\nrule enough {\n    says \"There is a bench\"\n    require benches >= 1\n}\n`;

class Folder {
    private readonly files: FileSystemProvider = Object.assign(new EmptyFileSystemProvider(), { readFile: (uri: URI): Promise<string> => Promise.resolve(this.texts.get(uri.path.replace('/jobs/', '')) ?? '') });
    private readonly shared = createServerServices({ fileSystemProvider: () => this.files }, { now: () => new Date(2026, 10, 25) }).shared;
    constructor(readonly texts: Map<string, string>) {
        this.shared.workspace.Imports.roots = [URI.parse('memory:/jobs')];
        this.shared.workspace.DocumentBuilder.updateBuildOptions = { validation: true };
        void this.shared.workspace.ConfigurationProvider.initialized({});
    }
    async open(): Promise<this> {
        const { LangiumDocuments, LangiumDocumentFactory, DocumentBuilder } = this.shared.workspace;
        for (const [path, text] of this.texts) LangiumDocuments.addDocument(LangiumDocumentFactory.fromString(text, this.uri(path)));
        await DocumentBuilder.build(LangiumDocuments.all.toArray(), { validation: true });
        return this;
    }
    /** @returns how many jobs were analysed because of it */
    async edit(path: string, change: (text: string) => string): Promise<number> {
        const before = this.texts.get(path) ?? '';
        this.texts.set(path, change(before));
        expect(this.texts.get(path)).not.toBe(before);
        jobCounts.analysed = 0;
        await this.shared.workspace.DocumentBuilder.update([this.uri(path)], []);
        return jobCounts.analysed;
    }
    told(): Readonly<Record<string, unknown>> {
        return Object.fromEntries(this.shared.workspace.LangiumDocuments.all.map(({ uri, diagnostics }) => [uri.path, JSON.parse(JSON.stringify(diagnostics)) as unknown]));
    }
    private readonly uri = (path: string): URI => URI.parse(`memory:/jobs/${path}`);
}

let folder: Folder;
beforeEach(async () => { folder = await new Folder(new Map([...[skerry, 'catalogue/heaters.hotroom'].map((path): [string, string] => [path, exampleText(path)]), ...jobs])).open(); });
const asFresh = async (): Promise<void> => { expect(folder.told()).toEqual((await new Folder(new Map(folder.texts)).open()).told()); };
const naming = (word: string): number => jobs.filter(([, text]) => new RegExp(`\\b${word}\\b`).test(text)).length;

test.each<readonly [string, (text: string) => string, number]>([
    ['a price, which only the stock plan reads', text => text.replace('1.35 USD', '1.45 USD'), 0],
    ['a price of more figures', text => text.replace('1.35 USD', '1000.35 USD'), 0],
    ['a remark between two entries, so that all after it move', text => text.replace('    stock alder_2x4', '    // strong\n\n    stock alder_2x4'), 0],
    ['a window', text => text.replace(/(window_model View18[\s\S]*?panes +)2/, '$13'), naming('View18')],
    ['a stock that others are made of', text => text.replace(/(stock alder_1x4[\s\S]*?section +)3\/4"/, '$15/8"'), jobs.length],
    ['another entry', text => text.replace('    stock alder_2x4', '    stock alder_3x4 "Alder" { nominal "3x4"; section 2 1/2" x 3 1/2" }\n    stock alder_2x4'), jobs.length],
    ['a brace that is missing', text => text.replace(/(window_model View18[\s\S]*?)\}/, '$1'), jobs.length],
])('%s', async (_what, change, analysed) => {
    expect(await folder.edit(skerry, change)).toBe(analysed);
    await asFresh();
});

test('some of the jobs have that window, and some have not', () => { expect(naming('View18')).toBeGreaterThan(0); expect(naming('View18')).toBeLessThan(jobs.length); });

test('an edit, and another before it: each is seen', async () => {
    expect(await folder.edit(skerry, text => text.replace('    stock alder_2x4', '\n\n    stock alder_2x4'))).toBe(0);
    expect(await folder.edit(skerry, text => text.replace(/(stock alder_1x4[\s\S]*?section +)3\/4"/, '$15/8"'))).toBe(jobs.length);
    expect(await folder.edit(skerry, text => text.replace('1.35 USD', '1.45 USD'))).toBe(0);
    await asFresh();
});

test('a job whose own text changes, and one whose name nobody knows, are analysed', async () => {
    expect(await folder.edit('job-0.hotroom', text => text.replace(/revision +"[^"]*"/, 'revision "C"'))).toBe(1);
    expect(await folder.edit('job-1.hotroom', text => text.replace(/system +Skerry/, 'system Skerri'))).toBe(1);
    expect(await folder.edit(skerry, text => text.replace('1.35 USD', '1.45 USD'))).toBe(1);
    await asFresh();
});

test('a house rule that is not about an entry is seen by all in whose sight it is', async () => {
    folder = await new Folder(new Map([...folder.texts].map(([path, text]): [string, string] => [path, path.startsWith('job-') ? `use "house.hotroom"\n${text}` : text])).set('house.hotroom', houseRule)).open();
    expect(await folder.edit('house.hotroom', text => text.replace('>= 1', '>= 3'))).toBe(jobs.length);
    await asFresh();
});

test('no finding hangs on a price', { timeout: 90_000 }, async () => {
    const found = async (change: (text: string) => string): Promise<unknown> => {
        const workspace = new TestWorkspace();
        const documents = examplePaths().filter(path => !/^(line|names)\//.test(path)).map(path => workspace.add(path, change(exampleText(path))));
        await workspace.build();
        return documents.flatMap(document => workspace.analyze(document).findings.map(({ rule, message }) => `${document.uri.path} ${rule} ${message}`));
    };
    let prices = 0;
    const dearer = await found(text => text.replace(/^( *price +)(\d)/gm, (_all, before: string, figure: string) => { prices++; return `${before}${(Number(figure) % 9) + 1}`; }));
    expect(prices).toBeGreaterThan(10);
    expect(dearer).toEqual(await found(text => text));
});
