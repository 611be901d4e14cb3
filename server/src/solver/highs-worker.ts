import { parentPort, workerData } from 'node:worker_threads';
import { loadSolver, solveProgram, type Highs } from './highs.js';
import type { WorkerAnswer, WorkerData, WorkerTask } from './worker-messages.js';

/** Thread that loads HiGHS at once and then solves one program after the other. */
const port = parentPort;
if (!port) throw new Error('The solver thread was started as a program of its own');
const { wasmPath } = workerData as WorkerData;
const loading: Promise<Highs> = loadSolver(wasmPath);

port.on('message', ({ id, program }: WorkerTask) => {
    loading.then(highs => solveProgram(highs, program)).then(
        result => { port.postMessage({ id, result } satisfies WorkerAnswer); },
        (error: unknown) => { port.postMessage({ id, error: error instanceof Error ? error.message : String(error) } satisfies WorkerAnswer); },
    );
});
