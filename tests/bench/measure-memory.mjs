import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

/** Heap of one more 60-line job in a server's workspace, its findings published and its analysis kept: the difference of 900 jobs, after collection. */
export function measureMemory(prepared) {
    const child = spawnSync(process.execPath, ['--expose-gc', fileURLToPath(new URL('memory-child.mjs', import.meta.url)), prepared.productPath, prepared.folder], { encoding: 'utf8', maxBuffer: 1e8 });
    if (child.status !== 0) throw new Error(`Measuring memory failed: ${child.stderr}`);
    return JSON.parse(child.stdout);
}
