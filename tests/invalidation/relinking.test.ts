import fc from 'fast-check';
import { AstUtils, DocumentState, EmptyFileSystemProvider, URI, isReference, type FileSystemProvider, type LangiumDocument } from 'langium';
import { beforeAll, describe, expect, test } from 'vitest';
import { createHotroomServices } from '../../language/src/syntax/module.js';
import { writeFile } from '../properties/job-text.js';
import { fileOf, randomJob } from '../properties/random-job.js';
import { exampleText } from '../support/workspace.js';

/** Three hundred jobs that share two catalogues, one job that uses a catalogue through another, and one full of names nobody knows. */
const jobCount = 300;
const texts = new Map<string, string>();
const uriOf = (path: string): URI => URI.parse(`memory:/jobs/${path}`);
const nameOf = ({ uri }: { readonly uri: URI }): string => uri.path.replace('/jobs/', '');

/** Files in memory. */
const files: FileSystemProvider = Object.assign(new EmptyFileSystemProvider(), {
    readFile: (uri: URI): Promise<string> => {
        const text = texts.get(nameOf({ uri }));
        return text === undefined ? Promise.reject(new Error(`No file ${uri.path}`)) : Promise.resolve(text);
    },
});
const { shared } = createHotroomServices({ fileSystemProvider: () => files });
const { DocumentBuilder, LangiumDocuments, LangiumDocumentFactory } = shared.workspace;
shared.workspace.Imports.roots = [URI.parse('memory:/jobs')];
let linked: string[] = [];

function add(path: string, text: string): void {
    texts.set(path, text);
    LangiumDocuments.addDocument(LangiumDocumentFactory.fromString(text, uriOf(path)));
}
/** The file's text from now on; answers with the files that were linked again because of it. */
async function edit(path: string, text: string): Promise<readonly string[]> {
    texts.set(path, text);
    linked = [];
    await DocumentBuilder.update([uriOf(path)], []);
    return linked.sort();
}
const job = (index: number): string => `job-${index}.hotroom`;
const document = (path: string): LangiumDocument => LangiumDocuments.getDocument(uriOf(path))!;

beforeAll(async () => {
    DocumentBuilder.onDocumentPhase(DocumentState.Linked, built => { linked.push(nameOf(built)); });
    for (const path of ['catalogue/skerry.hotroom', 'catalogue/heaters.hotroom']) add(path, exampleText(path));
    add('catalogue/screws.hotroom', 'catalogue screws {\n    screw spare_screw { length 2"; gauge 8; diameter 0.164"; penetration 1" }\n}\n');
    add('catalogue/between.hotroom', 'use "screws.hotroom"\n\ncatalogue between {\n    material felt { kind other }\n}\n');
    fc.sample(randomJob, { seed: 300, numRuns: jobCount }).forEach((random, index) => { add(job(index), writeFile(fileOf(random.job))); });
    add('alone.hotroom', 'use "catalogue/between.hotroom"\n\njob alone { number "1" }\n');
    add('guess.hotroom', 'use "catalogue/skerry.hotroom"\n\njob guess {\n    rules us_dwelling\n    room { system Skery; width 84"; depth 72"; height 7\'0" }\n    bench upper on back { build Slated; top 37"; depth 20" }\n}\n');
    await DocumentBuilder.build(LangiumDocuments.all.toArray());
    expect(LangiumDocuments.all.count()).toBe(jobCount + 6);
    expect(linked).toHaveLength(jobCount + 6);
});

describe('an edit links again what it can change, and nothing else', () => {
    test('one job of many: that job', async () => {
        expect(await edit(job(7), texts.get(job(7))!.replace('revision  "A"', 'revision  "B"'))).toEqual([job(7)]);
    });
    test('a job that gets a name nobody knows: that job, then and later', async () => {
        expect(await edit(job(8), texts.get(job(8))!.replace('system    Skerry', 'system    Skerri'))).toEqual([job(8)]);
        expect(await edit(job(9), texts.get(job(9))!.replace('revision  "A"', 'revision  "C"'))).toEqual([job(9)]);
    });
    test('words that answer to nothing in other files cause nothing', async () => {
        const { references } = document('guess.hotroom');
        expect(references.filter(reference => reference.error).map(reference => reference.$refText).sort()).toEqual(['Skery', 'Slated']);
        expect(await edit('alone.hotroom', texts.get('alone.hotroom')!.replace('"1"', '"2"'))).toEqual(['alone.hotroom']);
    });
    test('the shared catalogue: itself, the catalogue that uses it, and exactly the jobs that do', async () => {
        const changed = await edit('catalogue/skerry.hotroom', exampleText('catalogue/skerry.hotroom').replace('1.35 USD', '1.45 USD'));
        expect(changed).toEqual(['catalogue/heaters.hotroom', 'catalogue/skerry.hotroom', 'guess.hotroom', ...Array.from({ length: jobCount }, (_, index) => job(index))].sort());
    });
    test('a catalogue used by one file through another: those three', async () => {
        expect(await edit('catalogue/screws.hotroom', texts.get('catalogue/screws.hotroom')!.replace('2"', '3"'))).toEqual(['alone.hotroom', 'catalogue/between.hotroom', 'catalogue/screws.hotroom']);
    });
    test('a file that is new and that nobody uses: itself', async () => {
        add('new.hotroom', 'job fresh { rules us_dwelling }\n');
        expect(await edit('new.hotroom', 'job fresh { rules iec }\n')).toEqual(['new.hotroom']);
    });
    test('a `use` that is written anew is followed from then on', async () => {
        const user = 'use "catalogue/screws.hotroom"\n\njob fresh { rules iec }\n';
        expect(await edit('new.hotroom', user)).toEqual(['new.hotroom']);
        expect(await edit('catalogue/screws.hotroom', texts.get('catalogue/screws.hotroom')!.replace('3"', '4"'))).toContain('new.hotroom');
        expect(await edit('new.hotroom', user.slice(user.indexOf('job')))).toEqual(['new.hotroom']);
        expect(await edit('catalogue/screws.hotroom', texts.get('catalogue/screws.hotroom')!.replace('4"', '5"'))).not.toContain('new.hotroom');
    });
    test('a used file that goes and comes back is noticed by its user', async () => {
        const path = 'catalogue/screws.hotroom';
        linked = [];
        await DocumentBuilder.update([], [uriOf(path)]);
        expect(linked.sort()).toEqual(['alone.hotroom', 'catalogue/between.hotroom']);
        add(path, texts.get(path)!);
        expect(await edit(path, texts.get(path)!)).toEqual(['alone.hotroom', 'catalogue/between.hotroom', path]);
    });
});

test('names of one job are seen in that job only: no job links into another', () => {
    const places = new Set(Array.from({ length: jobCount }, (_, index) => document(job(index))).flatMap(one => one.references.flatMap(reference => {
        const home = isReference(reference) && reference.ref ? AstUtils.getDocument(reference.ref) : undefined;
        return home ? [home === one ? 'itself' : nameOf(home)] : [];
    })));
    expect([...places].sort()).toEqual(['catalogue/heaters.hotroom', 'catalogue/skerry.hotroom', 'itself']);
});
