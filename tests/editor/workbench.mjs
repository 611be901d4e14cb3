/** A real editor workbench with the packaged extension, driven through its user interface. */
import { spawn, spawnSync } from 'node:child_process';
import fs from 'node:fs';
import net from 'node:net';
import os from 'node:os';
import path from 'node:path';
import { launchBrowser } from './browser.mjs';

const settings = {
    'workbench.startupEditor': 'none', 'workbench.tips.enabled': false, 'workbench.enableExperiments': false,
    'workbench.welcomePage.walkthroughs.openOnInstall': false, 'workbench.secondarySideBar.defaultVisibility': 'hidden',
    'telemetry.telemetryLevel': 'off', 'extensions.autoCheckUpdates': false, 'extensions.autoUpdate': false,
    'chat.disableAIFeatures': true, 'git.enabled': false, 'editor.minimap.enabled': false,
    'files.simpleDialog.enable': true, 'files.autoSave': 'off', 'window.restoreWindows': 'all',
    // The folder stays untrusted: everything below has to work in Restricted Mode.
    'security.workspace.trust.startupPrompt': 'never', 'security.workspace.trust.banner': 'never',
};

export const themes = {
    light: { label: 'Light Modern', look: 'vs' },
    dark: { label: 'Dark Modern', look: 'vs-dark' },
    'high-contrast': { label: 'Dark High Contrast', look: 'hc-black' },
    'high-contrast-light': { label: 'Light High Contrast', look: 'hc-light' },
};

export class Workbench {
    /** Requests that would have left this machine. */
    outside = [];
    /** What the workbench wrote to its console; the extension host's log ends there too. */
    console = [];
    #host;
    #home = fs.mkdtempSync(path.join(os.tmpdir(), 'hotroom-editor-'));
    #server;
    #browser;
    page;

    /** @param host Node.js and the workbench's entry, as `fetchHost` gives them. @param workspaceSources folders copied into one workspace. */
    constructor(host, workspaceSources) {
        this.#host = host;
        for (const source of workspaceSources) fs.cpSync(source, this.workspace, { recursive: true });
        for (const folder of [path.join(this.#userData, 'User'), this.#extensions]) fs.mkdirSync(folder, { recursive: true });
        fs.writeFileSync(path.join(this.#userData, 'config.yaml'), '');
        fs.writeFileSync(path.join(this.#userData, 'User/settings.json'), JSON.stringify(settings, null, 1));
    }

    get workspace() { return path.join(this.#home, 'workspace'); }
    get #userData() { return path.join(this.#home, 'user-data'); }
    get #extensions() { return path.join(this.#home, 'extensions'); }
    get #common() {
        return ['--user-data-dir', this.#userData, '--extensions-dir', this.#extensions, '--config', path.join(this.#userData, 'config.yaml')];
    }
    get #env() {
        return { ...process.env, EXTENSIONS_GALLERY: '{"serviceUrl":""}', HOME: this.#home, XDG_DATA_HOME: this.#home, XDG_CONFIG_HOME: this.#home };
    }

    install(vsix) {
        const done = spawnSync(this.#host.node, [this.#host.entry, ...this.#common, '--install-extension', vsix], { env: this.#env, encoding: 'utf8' });
        if (!/successfully installed/.test(done.stdout)) throw new Error(`The package was not installed: ${done.stdout}${done.stderr}`);
    }

    /** Starts the workbench on the copied workspace and waits until its explorer lists it. */
    async open() {
        const port = await freePort();
        const log = fs.openSync(path.join(this.#home, 'server.log'), 'w');
        this.#server = spawn(this.#host.node, [
            this.#host.entry, ...this.#common, '--bind-addr', `127.0.0.1:${port}`, '--auth', 'none',
            '--disable-telemetry', '--disable-update-check', '--disable-getting-started-override',
        ], { env: this.#env, detached: true, stdio: ['ignore', log, log] });
        await waitFor(async () => (await fetch(`http://127.0.0.1:${port}/healthz`)).ok, 'the workbench server to answer', 60_000);
        this.#browser = await launchBrowser();
        const context = await this.#browser.newContext({ viewport: { width: 1440, height: 900 } });
        this.page = await context.newPage();
        this.page.setDefaultTimeout(60_000);
        context.on('console', message => this.console.push({ kind: message.type(), text: message.text() }));
        context.on('weberror', error => this.console.push({ kind: 'error', text: String(error.error()) }));
        context.on('request', request => void this.#judge(request));
        await this.page.goto(`http://127.0.0.1:${port}/?folder=${encodeURIComponent(this.workspace)}`);
        await this.page.locator('.explorer-folders-view .monaco-list-row').first().waitFor({ timeout: 60_000 });
    }

    async openFile(name) {
        await this.page.locator('.explorer-folders-view .monaco-list-row', { hasText: name }).dblclick();
        await this.page.locator('.tab.active', { hasText: name }).waitFor();
        await this.page.locator('.editor-instance .view-line').first().waitFor();
    }

    /** Gives the keyboard to the text editor, which stands in the first group. */
    async focusEditor() {
        await this.page.keyboard.press('Control+1');
        await waitFor(() => this.page.evaluate(() => document.activeElement?.closest('.monaco-editor') !== null), 'the editor to hold the keyboard');
    }

    /** Puts the cursor at a line and column, both counted from 1. */
    async goTo(line, column = 1) {
        await this.page.keyboard.press('Control+g');
        await this.page.locator('.quick-input-widget input').waitFor();
        await this.page.keyboard.type(`${line}:${column}`);
        await this.page.keyboard.press('Enter');
        await this.page.locator('.quick-input-widget').waitFor({ state: 'hidden' });
        await this.page.locator('#status\\.editor\\.selection', { hasText: `Ln ${line}, Col ${column}` }).waitFor();
    }

    /** Runs a command through the palette, with the keyboard. */
    async run(title) {
        await this.palette(title);
        const rows = this.page.locator('.quick-input-list .monaco-list-row');
        await rows.filter({ hasText: title }).first().waitFor();
        // The palette puts what it thinks likeliest first, which need not be the command of exactly this name.
        const focused = this.page.locator('.quick-input-list .monaco-list-row.focused');
        for (let presses = 0; !(await focused.innerText()).startsWith(title); presses++) {
            if (presses > 10) throw new Error(`The palette does not list "${title}".`);
            await this.page.keyboard.press('ArrowDown');
        }
        await this.page.keyboard.press('Enter');
    }

    /** Opens the palette and types; the caller looks at what it lists. */
    async palette(text) {
        await this.page.keyboard.press('F1');
        await this.page.locator('.quick-input-widget input').waitFor();
        await this.page.keyboard.type(text);
    }

    async closePalette() {
        await this.page.keyboard.press('Escape');
        await this.page.locator('.quick-input-widget').waitFor({ state: 'hidden' });
    }

    /** Asks for the hover at a place, with the keyboard, until one with the wanted text comes. @returns its text. */
    async hoverAt(line, column, wanted) {
        const hover = this.page.locator('.monaco-hover:visible', { hasText: wanted }).first();
        return await waitFor(async () => {
            await this.page.keyboard.press('Escape');
            await this.goTo(line, column);
            await this.page.keyboard.press('Control+k');
            await this.page.keyboard.press('Control+i');
            await hover.waitFor({ timeout: 3000 });
            return (await hover.innerText()).replace(/\s+/g, ' ');
        }, `a hover with ${wanted}`, 60_000);
    }

    /** @param holding what the page has to hold. @returns the document inside the visible webview that has it. */
    async webview(holding = 'body') {
        for (const candidate of await this.page.locator('iframe.webview.ready').elementHandles()) {
            if (!await candidate.isVisible()) continue;
            const outer = await candidate.contentFrame();
            const handle = await outer.waitForSelector('iframe#active-frame');
            const inner = await handle.contentFrame();
            await inner.waitForLoadState();
            if (await inner.locator(holding).count() > 0) return inner;
        }
        throw new Error(`No page in sight holds ${holding}.`);
    }

    async useTheme(name) {
        await this.page.keyboard.press('Control+k');
        await this.page.keyboard.press('Control+t');
        await this.page.locator('.quick-input-list .monaco-list-row', { hasText: themes.light.label }).waitFor();
        await this.page.keyboard.type(themes[name].label);
        await this.page.locator('.quick-input-list .monaco-list-row.focused', { hasText: themes[name].label }).waitFor();
        await this.page.keyboard.press('Enter');
        await this.page.locator('.quick-input-widget').waitFor({ state: 'hidden' });
        await this.page.locator(`.monaco-workbench.${themes[name].look}`).waitFor();
    }

    /** Every log file: of the workbench, of the extension host and of each extension's output channels. */
    logs() {
        return fs.readdirSync(path.join(this.#userData, 'logs'), { withFileTypes: true, recursive: true })
            .filter(entry => entry.isFile() && entry.name.endsWith('.log'))
            .map(entry => path.join(entry.parentPath, entry.name))
            .map(file => ({ name: path.relative(this.#userData, file), text: fs.readFileSync(file, 'utf8') }));
    }

    /** @returns the process ids of this workbench's own language servers: those that run the extension installed here. */
    serverProcesses() {
        const folder = `${this.#extensions}/`;
        return fs.readdirSync('/proc').filter(name => /^\d+$/.test(name)).map(Number).filter(pid => {
            try {
                const words = fs.readFileSync(`/proc/${pid}/cmdline`, 'utf8').split('\0');
                return words.some(word => word.startsWith(folder) && word.endsWith('server.cjs'));
            } catch {
                return false; // ended meanwhile
            }
        });
    }

    async close() {
        await this.#browser?.close();
        if (this.#server?.pid) {
            const gone = new Promise(resolve => this.#server.once('exit', resolve));
            endGroup(this.#server.pid, 'SIGTERM');
            await Promise.race([gone, new Promise(resolve => setTimeout(resolve, 3000))]);
            endGroup(this.#server.pid, 'SIGKILL');
        }
        if (process.env.KEEP === '1') return console.log(`kept ${this.#home}`);
        fs.rmSync(this.#home, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
    }

    async #judge(request) {
        const { protocol, hostname, host, pathname } = new URL(request.url());
        if (!/^(https?|wss?):$/.test(protocol) || hostname === '127.0.0.1') return;
        // The workbench serves a webview's own files under a made-up name that its service worker answers; no name is looked up.
        const response = hostname.endsWith('.vscode-resource.vscode-cdn.net') ? await request.response().catch(() => null) : null;
        if (!response?.fromServiceWorker()) this.outside.push(`${host}${pathname.slice(0, 60)}`);
    }
}

/** Waits until the condition holds; what it throws meanwhile counts as "not yet". */
export async function waitFor(condition, what, limitMs = 60_000) {
    const started = Date.now();
    for (;;) {
        const value = await Promise.resolve().then(condition).catch(() => undefined);
        if (value) return value;
        if (Date.now() - started > limitMs) throw new Error(`Waited ${limitMs / 1000} s for ${what}.`);
        await new Promise(resolve => setTimeout(resolve, 100));
    }
}

function freePort() {
    return new Promise((resolve, reject) => {
        const server = net.createServer().once('error', reject).listen(0, '127.0.0.1', () => {
            const { port } = server.address();
            server.close(() => resolve(port));
        });
    });
}

function endGroup(pid, signal) {
    try {
        process.kill(-pid, signal);
    } catch (error) {
        if (error.code !== 'ESRCH') throw error; // gone already
    }
}
