import { mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { interleaved, median } from './figures.mjs';
import { LspProcess } from './lsp-process.mjs';
import { root, writeWorkspace } from './prepare.mjs';
import { editPlace, filePair, lineCount, sampleJobs } from './texts.mjs';
import { schemaOf } from './yaml-text.mjs';

const yamlSettings = { yaml: { schemaStore: { enable: false, url: '' }, kubernetesCRDStore: { enable: false, url: '' }, validate: true }, http: null, '[yaml]': null, editor: null };
const yamlOptions = { l10nPath: path.join(root, 'node_modules/yaml-language-server/l10n') };

/** The schema is named in the file itself, so that the very first diagnostics of the YAML server are whole. */
const withSchema = (folder, yaml) => `# yaml-language-server: $schema=./job.schema.json\n${yaml}`;

function workspaces(prepared, pair) {
    const ours = writeWorkspace(path.join(prepared.folder, `ours-${lineCount(pair.ours)}`), { 'job.hotroom': pair.ours });
    const theirs = path.join(prepared.folder, `yaml-${lineCount(pair.ours)}`);
    mkdirSync(theirs, { recursive: true });
    writeFileSync(path.join(theirs, 'job.schema.json'), JSON.stringify(schemaOf(prepared.product)));
    const text = withSchema(theirs, pair.yaml);
    writeFileSync(path.join(theirs, 'job.yaml'), text);
    return { ours: { folder: ours, text: pair.ours }, yaml: { folder: theirs, text } };
}

/** A word that both servers refuse, so that the diagnostics waited for are those of a whole check. */
const spoilt = text => text.replace(/fascia(:?) +(yes|no)/, 'fascia$1 maybe').replace(/stands(:?) outside/, 'stands$1 outdoors');

const start = async (server, languageId, folder, name, text) => {
    const began = performance.now();
    const process = new LspProcess(server, folder, yamlSettings, yamlOptions);
    const first = process.diagnostics(name, diagnostics => diagnostics.length > 0);
    await process.initialize();
    process.open(name, languageId, text);
    await first;
    const took = performance.now() - began;
    await process.stop();
    return took;
};

/** Process started, handshake, file opened, diagnostics of the whole check here. */
export async function measureStart(prepared) {
    const pair = filePair(prepared.product, sampleJobs(prepared.product, 1));
    const { ours, yaml } = workspaces(prepared, pair);
    const times = await interleaved({
        ours: () => start(prepared.server, 'hotroom', ours.folder, 'job.hotroom', spoilt(ours.text)),
        yaml: () => start(prepared.yamlServer, 'yaml', yaml.folder, 'job.yaml', spoilt(yaml.text)),
    }, { rounds: 9, warmUp: 1 });
    return { ours: median(times.ours), yaml: median(times.yaml) };
}

/** A figure changed in a file that is open, diagnostics of that version here. */
export async function measureEdits(prepared) {
    const results = [];
    for (const { jobs, rounds, warmUp } of [{ jobs: 1, rounds: 60, warmUp: 60 }, { jobs: 10, rounds: 30, warmUp: 20 }]) {
        const pair = filePair(prepared.product, sampleJobs(prepared.product, jobs));
        const { ours, yaml } = workspaces(prepared, pair);
        const editors = await Promise.all([
            openEditor(prepared.server, 'hotroom', ours.folder, 'job.hotroom', spoilt(ours.text)),
            openEditor(prepared.yamlServer, 'yaml', yaml.folder, 'job.yaml', spoilt(yaml.text)),
        ]);
        const times = await interleaved({ ours: editors[0].edit, yaml: editors[1].edit }, { rounds, warmUp });
        await Promise.all(editors.map(editor => editor.stop()));
        results.push({ lines: lineCount(pair.ours), ours: median(times.ours), yaml: median(times.yaml) });
    }
    return results;
}

async function openEditor(server, languageId, folder, name, text) {
    const process = new LspProcess(server, folder, yamlSettings, yamlOptions);
    const first = process.diagnostics(name, diagnostics => diagnostics.length > 0);
    await process.initialize();
    process.open(name, languageId, text);
    await first;
    // What a server still does after the first answer must not fall into the first edit.
    await new Promise(resolve => { setTimeout(resolve, 500); });
    const place = editPlace(text);
    let turn = 0;
    return {
        edit: async () => {
            turn += 1;
            const next = process.diagnostics(name);
            const began = performance.now();
            process.change(name, place.range, String(place.figure + turn % 2));
            await next;
            const took = performance.now() - began;
            await new Promise(resolve => { setTimeout(resolve, 5); });
            return took;
        },
        stop: () => process.stop(),
    };
}
