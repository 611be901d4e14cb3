import { spawn, type ChildProcess } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'esbuild';
import {
    ConfigurationRequest, DidOpenTextDocumentNotification, ExitNotification, InitializeRequest, InitializedNotification, LogMessageNotification, PublishDiagnosticsNotification, RegistrationRequest, ShutdownRequest,
    StreamMessageReader, StreamMessageWriter, createProtocolConnection, type Diagnostic, type InitializeResult, type ProtocolConnection,
} from 'vscode-languageserver-protocol/node';

/** The protocol still wants this older field named. */
const noRoot = { rootUri: null };
const root = fileURLToPath(new URL('../../../', import.meta.url));

/** Bundles the server the way the package has it, into a folder of its own. */
export async function bundleServer(folder: string): Promise<string> {
    const outfile = path.join(folder, 'dist', 'server.cjs');
    const shared = {
        absWorkingDir: root, bundle: true, platform: 'node', format: 'cjs', target: 'node22', mainFields: ['module', 'main'], logLevel: 'error',
        define: { 'import.meta.url': 'ownUrl' }, banner: { js: 'const ownUrl=require(\'node:url\').pathToFileURL(__filename).href;' },
    } as const;
    await build({ ...shared, mainFields: [...shared.mainFields], entryPoints: ['server/src/main.ts'], outfile });
    await build({ ...shared, mainFields: [...shared.mainFields], entryPoints: ['server/src/solver/highs-worker.ts'], outfile: path.join(folder, 'dist', 'highs-worker.cjs') });
    cpSync(path.join(root, 'node_modules/highs/build/highs.wasm'), path.join(folder, 'dist', 'highs.wasm'));
    return outfile;
}

/** The server as a process of its own, spoken to over its streams, with a folder of files. */
export class StdioServer {
    readonly connection: ProtocolConnection;
    readonly logged: string[] = [];
    readonly result: Promise<InitializeResult>;
    exitCode: Promise<number | null>;
    private readonly process: ChildProcess;
    private readonly told = new Map<string, { diagnostics: readonly Diagnostic[]; version: number }>();
    private waiting: { uri: string; resolve: (diagnostics: readonly Diagnostic[]) => void; wants: (diagnostics: readonly Diagnostic[]) => boolean }[] = [];

    constructor(bundle: string, readonly folder: string, { hasFolder = true, settings = {}, asks = false, initializationOptions = {} } = {}) {
        this.process = spawn(process.execPath, [bundle, '--stdio'], { stdio: ['pipe', 'pipe', 'inherit'] });
        this.exitCode = new Promise(resolve => { this.process.on('exit', resolve); });
        this.connection = createProtocolConnection(new StreamMessageReader(this.process.stdout!), new StreamMessageWriter(this.process.stdin!));
        this.connection.onNotification(PublishDiagnosticsNotification.type, ({ uri, diagnostics }) => {
            this.told.set(uri, { diagnostics, version: (this.told.get(uri)?.version ?? 0) + 1 });
            for (const one of this.waiting.filter(waiter => waiter.uri === uri && waiter.wants(diagnostics))) { this.waiting = this.waiting.filter(other => other !== one); one.resolve(diagnostics); }
        });
        this.connection.onNotification(LogMessageNotification.type, ({ message }) => { this.logged.push(message); });
        this.connection.onRequest(ConfigurationRequest.type, ({ items }) => items.map(() => settings) as never);
        this.connection.onRequest(RegistrationRequest.type, () => undefined);
        this.connection.listen();
        const workspaceFolders = hasFolder ? [{ uri: pathToFileURL(folder).href, name: 'work' }] : null;
        this.result = this.connection.sendRequest(InitializeRequest.type, {
            processId: process.pid, workspaceFolders, ...noRoot, initializationOptions,
            capabilities: {
                workspace: { configuration: true, workspaceFolders: true, didChangeConfiguration: { dynamicRegistration: true }, didChangeWatchedFiles: { dynamicRegistration: true }, ...(asks && { diagnostics: { refreshSupport: true } }) },
                textDocument: { completion: { completionItem: { snippetSupport: true } }, publishDiagnostics: { relatedInformation: true }, ...(asks && { diagnostic: {} }) },
            },
        }).then(async result => { await this.connection.sendNotification(InitializedNotification.type, {}); return result; });
    }

    uri(name: string): string { return pathToFileURL(path.join(this.folder, name)).href; }
    async open(uri: string, text: string, version = 1): Promise<void> {
        await this.connection.sendNotification(DidOpenTextDocumentNotification.type, { textDocument: { uri, languageId: 'hotroom', version, text } });
    }
    /** The next diagnostics of a file, or those it has, that are as wanted. */
    diagnostics(uri: string, wants: (diagnostics: readonly Diagnostic[]) => boolean = () => true): Promise<readonly Diagnostic[]> {
        const known = this.told.get(uri);
        if (known && wants(known.diagnostics)) return Promise.resolve(known.diagnostics);
        return new Promise((resolve, reject) => {
            const timer = setTimeout(() => { reject(new Error(`No such diagnostics of ${uri}; last: ${JSON.stringify(this.told.get(uri)?.diagnostics.map(({ message }) => message))}; log: ${this.logged.join('\n')}`)); }, 20_000);
            this.waiting.push({ uri, wants, resolve: diagnostics => { clearTimeout(timer); resolve(diagnostics); } });
        });
    }
    forget(uri: string): void { this.told.delete(uri); }
    async end(): Promise<number | null> {
        await this.connection.sendRequest(ShutdownRequest.type);
        await this.connection.sendNotification(ExitNotification.type);
        return this.exitCode;
    }
    kill(): void { this.process.kill('SIGKILL'); }
}

/** A folder with some files, and its removal. */
export function folderWith(files: Readonly<Record<string, string>>): { readonly folder: string; readonly remove: () => void } {
    const folder = mkdtempSync(path.join(tmpdir(), 'hotroom-test-'));
    for (const [name, text] of Object.entries(files)) {
        mkdirSync(path.dirname(path.join(folder, name)), { recursive: true });
        writeFileSync(path.join(folder, name), text);
    }
    return { folder, remove: () => { rmSync(folder, { recursive: true, force: true }); } };
}
