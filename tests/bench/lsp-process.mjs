import { spawn } from 'node:child_process';
import path from 'node:path';
import { pathToFileURL } from 'node:url';

/** A language server as an editor starts it, over its standard streams, with what it publishes. */
export class LspProcess {
    #process;
    #rest = Buffer.alloc(0);
    #nextId = 1;
    #answers = new Map();
    #watchers = new Set();
    #listeners = [];
    #versions = new Map();
    #settings;
    #options;

    /** @param settings answers to `workspace/configuration`, by section; @param options what the server wants to be told at the start */
    constructor(program, folder, settings = {}, options = {}) {
        this.folder = folder;
        this.#options = options;
        this.#settings = settings;
        this.#process = spawn(process.execPath, [program, '--stdio'], { cwd: folder, stdio: ['pipe', 'pipe', 'pipe'] });
        this.#process.stdout.on('data', chunk => { this.#read(chunk); });
        this.stderr = '';
        this.#process.stderr.on('data', chunk => { this.stderr += chunk; });
    }

    get pid() { return this.#process.pid; }
    uri(name) { return pathToFileURL(path.join(this.folder, name)).href; }

    async initialize() {
        const rootUri = pathToFileURL(this.folder).href;
        await this.request('initialize', {
            processId: process.pid, rootUri, initializationOptions: this.#options, workspaceFolders: [{ uri: rootUri, name: 'bench' }],
            capabilities: { textDocument: { publishDiagnostics: { relatedInformation: true, versionSupport: true }, synchronization: {} }, workspace: { workspaceFolders: true, configuration: true } },
        });
        this.notify('initialized', {});
    }
    open(name, languageId, text) {
        this.#versions.set(name, 1);
        this.notify('textDocument/didOpen', { textDocument: { uri: this.uri(name), languageId, version: 1, text } });
    }
    change(name, range, text) {
        const version = this.#versions.get(name) + 1;
        this.#versions.set(name, version);
        this.notify('textDocument/didChange', { textDocument: { uri: this.uri(name), version }, contentChanges: [{ range, text }] });
    }

    /** Resolves with the diagnostics of a file when they come next and satisfy `isWanted`. */
    diagnostics(name, isWanted = () => true) {
        const uri = this.uri(name);
        return this.watch('textDocument/publishDiagnostics', params => params.uri === uri && isWanted(params.diagnostics));
    }
    /** Calls `listener` with the parameters of every notification of that method. */
    listen(method, listener) { this.#listeners.push({ method, listener }); }
    /** Resolves with the parameters of the next notification that satisfies `isWanted`. */
    watch(method, isWanted) {
        return new Promise((resolve, reject) => {
            const watcher = { method, isWanted, resolve };
            this.#watchers.add(watcher);
            const timer = setTimeout(() => { this.#watchers.delete(watcher); reject(new Error(`Nothing came of ${method} within two minutes. ${this.stderr.slice(0, 500)}`)); }, 120_000);
            watcher.resolve = value => { clearTimeout(timer); resolve(value); };
        });
    }
    notify(method, params) { this.#send({ jsonrpc: '2.0', method, params }); }
    request(method, params) {
        const id = this.#nextId++;
        this.#send({ jsonrpc: '2.0', id, method, params });
        return new Promise((resolve, reject) => { this.#answers.set(id, { resolve, reject }); });
    }
    async stop() {
        await this.request('shutdown', null).catch(() => undefined);
        const ended = new Promise(resolve => { this.#process.once('exit', resolve); });
        this.notify('exit', null);
        const timer = setTimeout(() => { this.#process.kill('SIGKILL'); }, 3000);
        await ended;
        clearTimeout(timer);
    }

    #send(message) {
        const body = Buffer.from(JSON.stringify(message));
        this.#process.stdin.write(`Content-Length: ${body.length}\r\n\r\n`);
        this.#process.stdin.write(body);
    }
    #read(chunk) {
        this.#rest = this.#rest.length === 0 ? chunk : Buffer.concat([this.#rest, chunk]);
        for (;;) {
            const head = this.#rest.indexOf('\r\n\r\n');
            if (head < 0) return;
            const size = Number(/Content-Length: (\d+)/i.exec(this.#rest.toString('latin1', 0, head))[1]);
            if (this.#rest.length < head + 4 + size) return;
            const message = JSON.parse(this.#rest.toString('utf8', head + 4, head + 4 + size));
            this.#rest = this.#rest.subarray(head + 4 + size);
            this.#take(message);
        }
    }
    #take(message) {
        if (message.method === undefined) {
            const answer = this.#answers.get(message.id);
            this.#answers.delete(message.id);
            if (message.error) answer?.reject(new Error(message.error.message)); else answer?.resolve(message.result);
        } else if (message.id !== undefined) {
            const result = message.method === 'workspace/configuration' ? message.params.items.map(({ section }) => this.#settings[section] ?? null) : null;
            this.#send({ jsonrpc: '2.0', id: message.id, result });
        } else {
            for (const { method, listener } of this.#listeners) if (method === message.method) listener(message.params);
            for (const watcher of [...this.#watchers]) if (watcher.method === message.method && watcher.isWanted(message.params)) { this.#watchers.delete(watcher); watcher.resolve(message.params); }
        }
    }
}
