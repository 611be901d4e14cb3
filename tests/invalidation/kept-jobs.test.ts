import { beforeEach, expect, test } from 'vitest';
import { DocumentState, EmptyFileSystemProvider, URI, type FileSystemProvider, type LangiumDocument } from 'langium';
import { analyze, forget, type Analysis } from '../../language/src/analyze.js';
import { jobCounts } from '../../language/src/analysis/kept-jobs.js';
import { engineRuns } from '../../language/src/assembly/remember.js';
import { withStandardJob } from '../support/standard-job.js';
import { createHotroomServices } from '../../language/src/syntax/module.js';
import { exampleText } from '../support/workspace.js';

const one = withStandardJob('');
const uses = one.slice(0, one.indexOf('job standard'));
const job = (name: string): string => one.slice(one.indexOf('job standard')).replace('job standard', `job ${name}`);

/** Documents whose text is what `texts` says, so that they can be read anew as an editor's are. */
function openAll(texts: ReadonlyMap<string, string>): { readonly services: ReturnType<typeof createHotroomServices>; readonly at: (path: string) => LangiumDocument } {
    const files: FileSystemProvider = Object.assign(new EmptyFileSystemProvider(), { readFile: (uri: URI): Promise<string> => Promise.resolve(texts.get(uri.path.replace('/jobs/', '')) ?? '') });
    const services = createHotroomServices({ fileSystemProvider: () => files });
    const { LangiumDocuments, LangiumDocumentFactory, Imports } = services.shared.workspace;
    Imports.roots = [URI.parse('memory:/jobs')];
    for (const [path, text] of texts) LangiumDocuments.addDocument(LangiumDocumentFactory.fromString(text, URI.parse(`memory:/jobs/${path}`)));
    return { services, at: path => LangiumDocuments.getDocument(URI.parse(`memory:/jobs/${path}`)) as LangiumDocument };
}

let texts: Map<string, string>;
let opened: ReturnType<typeof openAll>;
const analyzed = (): Analysis => analyze(opened.at('jobs.hotroom'), opened.services.hotroom);
beforeEach(async () => {
    texts = new Map(['catalogue/skerry.hotroom', 'catalogue/heaters.hotroom'].map(path => [path, exampleText(path)]));
    texts.set('jobs.hotroom', uses + ['a', 'b', 'c'].map(job).join('\n'));
    opened = openAll(texts);
    opened.services.shared.workspace.DocumentBuilder.onDocumentPhase(DocumentState.Linked, forget);
    await opened.services.shared.workspace.DocumentBuilder.build(opened.services.shared.workspace.LangiumDocuments.all.toArray());
    analyzed();
});

/** Changes a text as an editor does and analyses again: with what is kept, and from nothing. */
async function edit(change: (text: string) => string, path = 'jobs.hotroom'): Promise<{ readonly kept: Analysis; readonly fresh: Analysis; readonly analysed: number }> {
    texts.set(path, change(texts.get(path) ?? ''));
    jobCounts.analysed = jobCounts.kept = 0;
    await opened.services.shared.workspace.DocumentBuilder.update([URI.parse(`memory:/jobs/${path}`)], []);
    const kept = analyzed();
    const { analysed } = jobCounts;
    const other = openAll(texts);
    await other.services.shared.workspace.DocumentBuilder.build(other.services.shared.workspace.LangiumDocuments.all.toArray());
    return { kept, fresh: analyze(other.at('jobs.hotroom'), other.services.hotroom), analysed };
}
const plain = ({ findings }: Analysis): unknown => JSON.parse(JSON.stringify(findings));

test.each<readonly [string, (text: string) => string, number]>([
    ['one figure of the middle job', text => text.replace(/(job b[\s\S]*?top {7})37"/, '$136"'), 1],
    ['one figure of the first job', text => text.replace('top       37"', 'top       36 1/2"'), 1],
    ['a remark between jobs', text => text.replace('job b', '// the second\n\njob b'), 0],
    ['a blank line at the top', text => `\n\n${text}`, 0],
    ['a line that is half typed', text => text.replace(/(job c[\s\S]*?)depth {5}20"/, '$1depth     '), 1],
    ['a brace that is missing in the middle job', text => text.replace(/(job b[\s\S]*?top {7}37"[\s\S]*?)\}/, '$1'), 1],
    ['jobs in another order', text => text.slice(0, text.indexOf('job a')) + text.slice(text.indexOf('job c')) + '\n' + text.slice(text.indexOf('job a'), text.indexOf('job c')), 0],
    ['a job that is gone', text => text.slice(0, text.indexOf('job c')), 0],
    ['a let at the top', text => `let x = 3"\n${text}`, 3],
    ['a variant of the middle job', text => text.replace(/(job b[^\n]*\n)/, '$1variant low "Low" { bench upper { top 36" } }\n'), 2],
])('%s', async (_what, change, analysed) => {
    const edited = await edit(change);
    expect(plain(edited.kept)).toEqual(plain(edited.fresh));
    expect(edited.analysed).toBe(analysed);
});

test('what was kept is worked out again for whoever asks, at its new place', async () => {
    const { kept, fresh } = await edit(text => `\n\n${text}`);
    expect(kept.jobs.map(({ job: { block } }) => block.span)).toEqual(fresh.jobs.map(({ job: { block } }) => block.span));
    expect(kept.jobs[1]?.results.parts.length).toBe(fresh.jobs[1]?.results.parts.length);
});

test('a used file that changes is seen', async () => {
    const { kept, fresh, analysed } = await edit(text => text.replaceAll('power     ', 'powr      '), 'catalogue/heaters.hotroom');
    expect(plain(kept)).toEqual(plain(fresh));
    expect(analysed).toBe(3);
});

test('a keystroke runs only the engines whose input it changes', async () => {
    const count = (): Record<string, number> => Object.fromEntries(engineRuns());
    const between = async (change: (text: string) => string): Promise<Record<string, number>> => {
        texts.set('jobs.hotroom', change(texts.get('jobs.hotroom') ?? ''));
        await opened.services.shared.workspace.DocumentBuilder.update([URI.parse('memory:/jobs/jobs.hotroom')], []);
        const before = count();
        void analyzed().jobs[0]?.facts.under();
        return Object.fromEntries(Object.entries(count()).map(([engine, runs]) => [engine, runs - (before[engine] ?? 0)]));
    };
    const cold = { envelope: 0, 'warm-up': 0, 'power-needed': 0 };
    // What only facts ask for has run once before the first keystroke.
    void analyzed().jobs[0]?.facts.under();
    expect(await between(text => text.replace('rules     us_dwelling', 'rules     us_dwelling\n    drawn_by "someone"'))).toEqual({ shell: 0, benches: 0, strength: 0, circuit: 0, 'turning space': 0, ...cold });
    expect(await between(text => text.replace('capacity  60 A', 'capacity  61.5 A'))).toEqual({ shell: 0, benches: 0, strength: 0, circuit: 1, 'turning space': 0, ...cold });
    expect(await between(text => text.replace('top       18"', 'top       17 13/16"'))).toEqual({ shell: 0, benches: 1, strength: 1, circuit: 0, 'turning space': 0, ...cold });
    expect(await between(text => text.replace(/width {5}84"/, 'width     84 1/64"'))).toEqual({ shell: 1, benches: 1, strength: 1, circuit: 0, 'turning space': 1, envelope: 1, 'warm-up': 1, 'power-needed': 0 });
});
