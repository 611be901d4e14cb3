import type { HotroomServerSharedServices } from '../services.js';
import { untilMidnight } from '../today.js';
import { OpenFiles } from './open-files.js';

/**
 * Checks files anew when the day changes: a waiver may have run out. A machine that slept through midnight does so when it wakes, and every edit counts with
 * the day it is made on.
 * @returns a function that ends it
 */
export function followDays(shared: HotroomServerSharedServices): () => void {
    let timer: NodeJS.Timeout;
    const wait = (): void => {
        // a second late, as timers may go off early
        timer = setTimeout(() => { checkWaivers(shared); wait(); }, untilMidnight(shared.workspace.now()) + 1000);
        timer.unref();
    };
    wait();
    return () => { clearTimeout(timer); };
}

function checkWaivers({ lsp: { DocumentUpdateHandler }, workspace: { LangiumDocuments } }: HotroomServerSharedServices): void {
    if (!(DocumentUpdateHandler instanceof OpenFiles)) return;
    const withDays = LangiumDocuments.all.filter(({ textDocument }) => /\buntil\b/.test(textDocument.getText())).map(({ uri }) => uri).toArray();
    if (withDays.length > 0) DocumentUpdateHandler.checkAgain(withDays);
}
