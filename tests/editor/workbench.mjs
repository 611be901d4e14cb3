/** A real editor workbench with the packaged extension, driven through its user interface. */
import { spawn, spawnSync } from 'node:child_process';
import fs from 'node:fs';
import net from 'node:net';
import os from 'node:os';
import path from 'node:path';
import { launchBrowser } from './browser.mjs';

const baseSettings = {
    'workbench.startupEditor': 'none', 'workbench.tips.enabled': false, 'workbench.enableExperiments': false,
    'workbench.welcomePage.walkthroughs.openOnInstall': false, 'workbench.secondarySideBar.defaultVisibility': 'hidden',
    'telemetry.telemetryLevel': 'off', 'extensions.autoCheckUpdates': false, 'extensions.autoUpdate': false,
    'chat.disableAIFeatures': true, 'git.enabled': false, 'editor.minimap.enabled': false,
    'files.simpleDialog.enable': true, 'files.autoSave': 'off', 'window.restoreWindows': 'all',
    // The folder stays untrusted: everything below has to work in Restricted Mode.
    'security.workspace.trust.startupPrompt': 'never', 'security.workspace.trust.banner': 'never',
};

export const themes = {
    light: { setting: 'Default Light Modern', look: 'vs' },
    dark: { setting: 'Default Dark Modern', look: 'vs-dark' },
    'high-contrast': { setting: 'Default High Contrast', look: 'hc-black' },
    'high-contrast-light': { setting: 'Default High Contrast Light', look: 'hc-light' },
};

export class Workbench {
    /** Requests that would have left this machine. */
    outside = [];
    #host;
    #home = fs.mkdtempSync(path.join(os.tmpdir(), 'hotroom-editor-'));
    #server;
    #browser;
    page;

    /** @param host Node.js and the workbench's entry, as `fetchHost` gives them. */
    constructor(host, workspaceSource) {
        this.#host = host;
        fs.cpSync(workspaceSource, this.workspace, { recursive: true });
        for (const folder of [path.join(this.#userData, 'User'), this.#extensions]) fs.mkdirSync(folder, { recursive: true });
        fs.writeFileSync(path.join(this.#userData, 'config.yaml'), '');
        this.#writeSettings({});
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
        this.page.setDefaultTimeout(30_000);
        context.on('request', request => void this.#judge(request));
        await this.page.goto(`http://127.0.0.1:${port}/?folder=${encodeURIComponent(this.workspace)}`);
        await this.page.locator('.explorer-folders-view .monaco-list-row').first().waitFor({ timeout: 60_000 });
    }

    async openFile(name) {
        await this.page.locator('.explorer-folders-view .monaco-list-row', { hasText: name }).dblclick();
        await this.page.locator('.tab.active', { hasText: name }).waitFor();
        await this.page.locator('.editor-instance .view-line').first().waitFor();
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
        await this.page.locator('.quick-input-list .monaco-list-row', { hasText: title }).first().waitFor();
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

    /** @returns the document inside the visible webview. */
    async webview() {
        const outer = await (await this.page.locator('iframe.webview.ready').elementHandle()).contentFrame();
        const handle = await outer.waitForSelector('iframe#active-frame');
        const inner = await handle.contentFrame();
        await inner.waitForLoadState();
        return inner;
    }

    async useTheme(name) {
        this.#writeSettings({ 'workbench.colorTheme': themes[name].setting });
        await this.page.locator(`.monaco-workbench.${themes[name].look}`).waitFor();
    }

    /** Text of the open editor, as shown. Lines the editor has not drawn are not in it. */
    async editorText() {
        const lines = await this.page.locator('.editor-instance .view-lines').first().evaluate(node =>
            [...node.children].sort((a, b) => parseFloat(a.style.top) - parseFloat(b.style.top)).map(line => line.textContent));
        return lines.join('\n').replace(/\u00a0/g, ' ');
    }

    /** Every log of the extension host and of the extension's own channel. */
    logs() {
        const found = [];
        const visit = folder => {
            for (const entry of fs.readdirSync(folder, { withFileTypes: true })) {
                const full = path.join(folder, entry.name);
                if (entry.isDirectory()) visit(full);
                else if (entry.name.endsWith('.log')) found.push({ name: path.relative(this.#userData, full), text: fs.readFileSync(full, 'utf8') });
            }
        };
        visit(this.#userData);
        return found;
    }

    serverLog() {
        return fs.readFileSync(path.join(this.#home, 'server.log'), 'utf8');
    }

    async close() {
        await this.#browser?.close();
        if (this.#server?.pid) {
            const gone = new Promise(resolve => this.#server.once('exit', resolve));
            endGroup(this.#server.pid, 'SIGTERM');
            await Promise.race([gone, new Promise(resolve => setTimeout(resolve, 3000))]);
            endGroup(this.#server.pid, 'SIGKILL');
        }
        fs.rmSync(this.#home, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
    }

    #writeSettings(more) {
        fs.writeFileSync(path.join(this.#userData, 'User/settings.json'), JSON.stringify({ ...baseSettings, ...more }, null, 1));
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
export async function waitFor(condition, what, limitMs = 30_000) {
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
