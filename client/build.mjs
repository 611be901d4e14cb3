/**
 * Bundles the extension, the language server, the command line and the pages into `dist/`.
 *
 * Each bundle is whole, so the packaged extension needs no installed packages. A missing entry is an error: a build that
 * quietly leaves a part out would only be noticed by the person who installs it.
 */
import * as esbuild from 'esbuild';
import fs from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';

const root = path.resolve(path.dirname(fileURLToPath(import.meta.url)), '..');
const dist = path.join(root, 'dist');

const shared = {
    absWorkingDir: root,
    bundle: true,
    minify: true,
    // Maps stand beside the bundles for reading a stack trace; the package leaves them out, so nothing refers to them.
    sourcemap: 'external',
    legalComments: 'none',
    metafile: true,
    logLevel: 'warning',
};

// A bundle is CommonJS, where `import.meta` is empty; parts that look for a file beside themselves ask for its URL.
const ownUrl = `const ownUrl=require('node:url').pathToFileURL(__filename).href;`;

const node = {
    ...shared,
    platform: 'node',
    format: 'cjs',
    target: 'node22',
    mainFields: ['module', 'main'],
    define: { 'import.meta.url': 'ownUrl' },
    banner: { js: ownUrl },
};

const bundles = [
    { ...node, entryPoints: ['client/src/extension.ts'], outfile: 'dist/extension.cjs', external: ['vscode'] },
    { ...node, entryPoints: ['server/src/main.ts'], outfile: 'dist/server-main.cjs' },
    { ...node, entryPoints: ['server/src/launch.ts'], outfile: 'dist/server.cjs', define: { ...node.define, program: '"server-main.cjs"' } },
    { ...node, entryPoints: ['server/src/cli/main.ts'], outfile: 'dist/cli-main.cjs' },
    { ...node, entryPoints: ['server/src/launch.ts'], outfile: 'dist/cli.cjs', define: { ...node.define, program: '"cli-main.cjs"' }, banner: { js: `#!/usr/bin/env node\n${ownUrl}` } },
    { ...node, entryPoints: ['server/src/solver/highs-worker.ts'], outfile: 'dist/highs-worker.cjs' },
    { ...shared, platform: 'browser', format: 'iife', target: 'es2023', entryPoints: ['client/src/page/cut-list.ts'], outfile: 'dist/page/cut-list.js' },
    { ...shared, entryPoints: ['client/src/page/cut-list.css'], outfile: 'dist/page/cut-list.css' },
    { ...shared, platform: 'browser', format: 'iife', target: 'es2023', entryPoints: ['client/src/page/comparison.ts'], outfile: 'dist/page/comparison.js' },
    { ...shared, platform: 'browser', format: 'iife', target: 'es2023', entryPoints: ['client/src/page/review.ts'], outfile: 'dist/page/review.js' },
    { ...shared, entryPoints: ['client/src/page/comparison.css'], outfile: 'dist/page/comparison.css' },
];

const missing = bundles.flatMap(bundle => bundle.entryPoints).filter(entry => !fs.existsSync(path.join(root, entry)));
if (missing.length > 0) {
    console.error(`build: missing ${missing.join(', ')}`);
    process.exit(1);
}

fs.rmSync(dist, { recursive: true, force: true });
const results = await Promise.all(bundles.map(bundle => esbuild.build(bundle)));
fs.copyFileSync(path.join(root, 'node_modules/highs/build/highs.wasm'), path.join(dist, 'highs.wasm'));
fs.chmodSync(path.join(dist, 'cli.cjs'), 0o755);

const inputs = new Set(results.flatMap(result => Object.keys(result.metafile.inputs)));
fs.writeFileSync(path.join(dist, 'THIRD-PARTY-NOTICES.txt'), notices(inputs));

for (const [index, { outfile }] of bundles.entries()) {
    const { bytes } = results[index].metafile.outputs[outfile];
    console.log(`${outfile.padEnd(24)} ${(bytes / 1024).toFixed(0).padStart(6)} KB`);
}

/** The licences of everything bundled. They ask to travel with every copy. */
function notices(files) {
    const packages = new Map();
    for (const file of [...files, 'node_modules/highs/build/highs.wasm']) {
        const folder = /^(?:.*\/)?node_modules\/(?:@[^/]+\/)?[^/]+/.exec(file)?.[0];
        if (folder) packages.set(folder, path.join(root, folder));
    }
    const texts = [...packages.values()].map(folder => {
        const { name, version, license } = JSON.parse(fs.readFileSync(path.join(folder, 'package.json'), 'utf8'));
        const file = fs.readdirSync(folder).find(entry => /^licen[cs]e/i.test(entry));
        const text = file ? fs.readFileSync(path.join(folder, file), 'utf8').trim() : `Licence: ${license ?? 'not stated'}`;
        return { name, text: `${name} ${version}\n${'='.repeat(name.length + version.length + 1)}\n\n${text.replace(/\r\n/g, '\n')}\n` };
    });
    texts.sort((a, b) => (a.name < b.name ? -1 : a.name > b.name ? 1 : 0));
    return `Hotroom includes the following software.\n\n${texts.map(({ text }) => text).join('\n\n')}`;
}
