import { spawn, spawnSync } from 'node:child_process';
import { copyFileSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import * as esbuild from 'esbuild';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { birchPoint, Folder, misspelt } from './command-line.js';

const root = fileURLToPath(new URL('../../../', import.meta.url));
let dist: string;
let program: string;

/** The program as it ships: one CommonJS file with the solver's binary beside it. */
beforeAll(async () => {
    dist = mkdtempSync(path.join(tmpdir(), 'hotroom-dist-'));
    program = path.join(dist, 'cli.cjs');
    await esbuild.build({
        absWorkingDir: root, entryPoints: ['server/src/cli/main.ts'], outfile: program, bundle: true, platform: 'node', format: 'cjs', target: 'node22', mainFields: ['module', 'main'],
        define: { 'import.meta.url': 'ownUrl' }, banner: { js: 'const ownUrl=require(\'node:url\').pathToFileURL(__filename).href;' }, logLevel: 'error',
    });
    copyFileSync(path.join(root, 'node_modules/highs/build/highs.wasm'), path.join(dist, 'highs.wasm'));
});
afterAll(() => { rmSync(dist, { recursive: true, force: true }); });

const call = (folder: Folder, ...words: readonly string[]) => spawnSync(process.execPath, [program, ...words], { cwd: folder.path, encoding: 'utf8', env: { ...process.env, NO_COLOR: '1' } });

test('checks and lists in a process of its own, and ends', () => {
    const folder = birchPoint();
    expect(call(folder, 'check', 'birch-point.hotroom')).toMatchObject({ status: 0, stderr: '' });
    const { status, stdout, stderr } = call(folder, 'cutlist', 'birch-point.hotroom');
    expect([status, stderr]).toEqual([0, '']);
    expect(stdout).toContain('Proven optimum');
});

test('exit codes come through', () => {
    const folder = new Folder({ 'a.hotroom': misspelt });
    expect(call(folder, 'check', 'a.hotroom').status).toBe(1);
    expect(call(folder, 'chek').status).toBe(2);
    expect(call(folder, 'check', 'gone.hotroom').status).toBe(3);
});

test('a reader that closes the pipe early hears no complaint', async () => {
    const folder = new Folder(Object.fromEntries(Array.from({ length: 40 }, (_, i) => [`${i}.hotroom`, `job j${i} {\n${'    topp 37"\n'.repeat(60)}}\n`])));
    const child = spawn(process.execPath, [program, 'check', '.'], { cwd: folder.path });
    let err = '';
    child.stderr.on('data', data => { err += String(data); });
    child.stdout.once('data', () => { child.stdout.destroy(); });
    await new Promise(resolve => { child.on('close', resolve); });
    expect(err).toBe('');
});

test('serve runs the server that lies beside the program, with its own arguments', () => {
    const folder = new Folder();
    expect(call(folder, 'serve', '--stdio')).toMatchObject({ status: 3, stdout: '', stderr: 'hotroom: The language server is not beside this program. Install it again.\n' });
    writeFileSync(path.join(dist, 'server.cjs'), 'process.stdout.write(process.argv.slice(2).join(" ")); process.exit(0);');
    expect(call(folder, 'serve', '--stdio')).toMatchObject({ status: 0, stdout: 'serve --stdio' });
});
