import path from 'node:path';
import { median } from './figures.mjs';
import { LspProcess } from './lsp-process.mjs';
import { writeWorkspace } from './prepare.mjs';
import { editPlace, sampleJobs } from './texts.mjs';

const jobCount = 1000;

/**
 * A folder of a thousand jobs that share two catalogues, three of the jobs and a catalogue open. How long the server takes to build it, to answer an edit of
 * one job, and after an edit of the shared catalogue to have the open files right and then everything.
 */
export async function measureWorkspace(prepared) {
    const { product } = prepared;
    const names = Array.from({ length: jobCount }, (_, i) => `job-${i + 1}.hotroom`);
    const texts = Object.fromEntries(sampleJobs(product, jobCount, 1000).map((job, i) => [names[i], product.writeFile(product.fileOf(job), 'in', 'compact')]));
    const folder = writeWorkspace(path.join(prepared.folder, 'thousand'), texts);
    const server = new LspProcess(prepared.server, folder);
    try {
        return await measure(server, names, texts, prepared.readExample('catalogue/skerry.hotroom'));
    } finally {
        await server.stop();
    }
}

async function measure(server, names, texts, catalogueText) {
    // Every file is told about once when it is checked: counting them tells when the whole folder is done.
    const counter = new Counter(server);
    const began = performance.now();
    const [open, ...others] = names;
    await server.initialize();
    server.open(open, 'hotroom', texts[open]);
    await counter.reaches(jobCount + 2);
    const build = performance.now() - began;

    const catalogue = 'catalogue/skerry.hotroom';
    for (const name of others.slice(0, 2)) { const first = server.diagnostics(name); server.open(name, 'hotroom', texts[name]); await first; }
    const first = server.diagnostics(catalogue);
    server.open(catalogue, 'hotroom', catalogueText);
    await first;
    await settled(counter);

    const place = editPlace(texts[open]);
    const edits = [];
    for (let i = 0; i < 40; i++) edits.push(await edit(server, open, place.range, String(place.figure + i % 2), [open]));
    await settled(counter);

    // The density of the lining: every room is checked anew. Its price: no finding hangs on it.
    const change = async place => {
        const [openFiles, everything] = [[], []];
        for (let i = 0; i < 4; i++) {
            counter.start();
            const start = performance.now();
            openFiles.push(await edit(server, catalogue, place.range, String(place.figure + (i + 1) % 2), [open, ...others.slice(0, 2)]));
            await counter.reaches(jobCount + 1);
            everything.push(performance.now() - start);
            await settled(counter);
        }
        return { openFiles: median(openFiles.slice(1)), everything: median(everything.slice(1)) };
    };
    const [price, density] = [await change(figurePlace(catalogueText, /price +(\d)/)), await change(figurePlace(catalogueText, /density +\d*(\d) kg/))];
    return { build, edit: median(edits.slice(10)), price, density };
}

async function edit(server, name, range, text, wanted) {
    const all = Promise.all(wanted.map(other => server.diagnostics(other)));
    const start = performance.now();
    server.change(name, range, text);
    await all;
    return performance.now() - start;
}

/** Where one figure stands, which is the last of what the pattern's group takes. */
function figurePlace(text, pattern) {
    const match = pattern.exec(text);
    const offset = match.index + match[0].lastIndexOf(match[1]);
    const line = text.slice(0, offset).split('\n').length - 1;
    const character = offset - (text.lastIndexOf('\n', offset - 1) + 1);
    return { range: { start: { line, character }, end: { line, character: character + 1 } }, figure: Number(match[1]) };
}

/** Resolves when nothing has been published for a while. */
async function settled(counter) {
    for (let before = -1; before !== counter.all;) {
        before = counter.all;
        await new Promise(resolve => { setTimeout(resolve, 400); });
    }
}

/** Counts files that diagnostics came for since the count was started. */
class Counter {
    #seen = new Set();
    #waiting;
    all = 0;
    constructor(server) {
        server.listen('textDocument/publishDiagnostics', ({ uri }) => {
            this.all += 1;
            this.#seen.add(uri);
            if (this.#waiting && this.#seen.size >= this.#waiting.count) { this.#waiting.resolve(); this.#waiting = undefined; }
        });
    }
    start() { this.#seen.clear(); }
    reaches(count) {
        if (this.#seen.size >= count) return Promise.resolve();
        return new Promise((resolve, reject) => {
            const timer = setTimeout(() => { reject(new Error(`Only ${this.#seen.size} of ${count} files were checked within two minutes`)); }, 120_000);
            this.#waiting = { count, resolve: () => { clearTimeout(timer); resolve(); } };
        });
    }
}
