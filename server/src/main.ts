import { existsSync } from 'node:fs';
import { NodeFileSystem } from 'langium/node';
import { ProposedFeatures, createConnection } from 'vscode-languageserver/node';
import { startHotroomServer } from './lsp/start.js';
import { createServerServices } from './services.js';
import { HighsInWorker } from './solver/highs-in-worker.js';

/** The language server as a process: over the streams or the channel its arguments name. */
const connection = createConnection(ProposedFeatures.all);
const log = (message: string): void => { connection.console.error(message); };

// One request that fails is not worth losing every file's state for: it is written down, and the server answers the next.
process.on('uncaughtException', error => { log(`Not caught: ${error.stack ?? error.message}`); });
process.on('unhandledRejection', reason => { log(`Not caught: ${reason instanceof Error ? reason.stack ?? reason.message : String(reason)}`); });

const pages = new Map<string, string | undefined>();
const solver = new HighsInWorker({ worker: new URL('highs-worker.cjs', import.meta.url) });
const { shared } = createServerServices({ connection, ...NodeFileSystem }, { log, solver, handbook: pageOf });
startHotroomServer(connection, shared);
connection.onShutdown(() => solver.close());

/** The handbook lies beside the program when it is installed whole. */
function pageOf(rule: string): string | undefined {
    if (!pages.has(rule)) {
        const page = new URL(`../language/handbook/${rule}.md`, import.meta.url);
        pages.set(rule, existsSync(page) ? page.href : undefined);
    }
    return pages.get(rule);
}
