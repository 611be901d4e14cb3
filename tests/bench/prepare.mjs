import * as esbuild from 'esbuild';
import { copyFileSync, mkdirSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

export const root = fileURLToPath(new URL('../../', import.meta.url));

const ownUrl = { define: { 'import.meta.url': 'ownUrl' }, banner: { js: 'const ownUrl=require("node:url").pathToFileURL(__filename).href;' } };
const program = { absWorkingDir: root, bundle: true, platform: 'node', target: 'node22', mainFields: ['module', 'main'], logLevel: 'error', minify: true };

/** The delay is no setting of the server, so the measured copy has it taken out of its source: it would hide what the server does. */
const withoutDelay = {
    name: 'without-delay',
    setup(build) {
        build.onLoad({ filter: /yaml-language-server[\\/]out[\\/]src[\\/]yamlSettings\.js$/ }, ({ path: file }) => {
            const source = readFileSync(file, 'utf8');
            const contents = source.replace('this.validationDelayMs = 200;', 'this.validationDelayMs = 0;');
            if (contents === source) throw new Error('The YAML server keeps its delay elsewhere now; look for it in its source.');
            return { contents, loader: 'js' };
        });
    },
};

/** Bundles the product, our server and the YAML server into a temporary folder. */
export async function prepare() {
    const folder = mkdtempSync(path.join(tmpdir(), 'hotroom-bench-'));
    const at = name => path.join(folder, name);
    await Promise.all([
        esbuild.build({ ...program, minify: false, entryPoints: ['tests/bench/product.ts'], outfile: at('product.mjs'), format: 'esm', banner: { js: 'import{createRequire}from"node:module";const require=createRequire(import.meta.url);' } }),
        esbuild.build({ ...program, ...ownUrl, entryPoints: ['server/src/main.ts'], outfile: at('server-main.cjs'), format: 'cjs' }),
        esbuild.build({ ...program, ...ownUrl, define: { ...ownUrl.define, program: '"server-main.cjs"' }, entryPoints: ['server/src/launch.ts'], outfile: at('server.cjs'), format: 'cjs' }),
        esbuild.build({ ...program, ...ownUrl, entryPoints: ['node_modules/yaml-language-server/out/src/server.js'], outfile: at('yaml-server.cjs'), format: 'cjs', plugins: [withoutDelay] }),
    ]);
    copyFileSync(path.join(root, 'node_modules/highs/build/highs.wasm'), at('highs.wasm'));
    const product = await import(pathToFileURL(at('product.mjs')).href);
    return { folder, product, productPath: at('product.mjs'), server: at('server.cjs'), yamlServer: at('yaml-server.cjs'), readExample: name => readFileSync(path.join(root, 'examples', name), 'utf8') };
}

/** A folder with the catalogues of examples/ and the given files. */
export function writeWorkspace(folder, files) {
    mkdirSync(path.join(folder, 'catalogue'), { recursive: true });
    for (const name of ['catalogue/skerry.hotroom', 'catalogue/heaters.hotroom']) copyFileSync(path.join(root, 'examples', name), path.join(folder, name));
    for (const [name, text] of Object.entries(files)) writeFileSync(path.join(folder, name), text);
    return folder;
}
