import { Worker } from 'node:worker_threads';
import type { IntegerProgram, IntegerResult, IntegerSolver } from '../../../language/src/engines/stock/integer-solver.js';
import type { WorkerAnswer, WorkerData, WorkerTask } from './worker-messages.js';

type Outcome = { readonly result: IntegerResult } | { readonly error: Error } | 'aborted';

interface Waiting {
    readonly program: IntegerProgram;
    readonly settle: (outcome: Outcome) => void;
}

/** Seconds a solve may take beyond its own limit before its thread is taken for dead. */
const GRACE_SECONDS = 5;
const NO_ANSWER: IntegerResult = { status: 'failed', objective: undefined, bound: -Infinity, values: undefined };

/**
 * HiGHS in a thread of its own: started at the first use and kept warm, never in the way of typing. A cancelled solve ends its thread,
 * because HiGHS cannot be asked to stop; the next one starts a new thread.
 */
export class HighsInWorker implements IntegerSolver {
    private readonly workerPath: string | URL;
    private readonly wasmPath: string | undefined;
    private readonly graceSeconds: number;
    private readonly waiting = new Map<number, Waiting>();
    private worker: Worker | undefined;
    private nextId = 1;
    private isClosed = false;

    /**
     * @param paths `worker` is the built thread (`highs-worker.cjs`); `wasm` is highs.wasm, needed when it does not lie beside the loader
     * @param options `graceSeconds` a solve may take beyond its limit before it counts as failed
     */
    constructor(paths: { readonly worker: string | URL; readonly wasm?: string }, options: { readonly graceSeconds?: number } = {}) {
        this.workerPath = paths.worker;
        this.wasmPath = paths.wasm;
        this.graceSeconds = options.graceSeconds ?? GRACE_SECONDS;
    }

    /** Starts the thread ahead of the first plan, so that the solver is loaded when it is needed. */
    warm(): void {
        this.start();
    }

    /** Ends the thread for good; solves that wait are rejected. */
    async close(): Promise<void> {
        this.isClosed = true;
        this.rejectAll(new Error('The solver was closed'));
        await this.stop();
    }

    pause(): Promise<void> {
        return new Promise(resolve => { setImmediate(resolve); });
    }

    async solve(program: IntegerProgram, signal?: AbortSignal): Promise<IntegerResult> {
        signal?.throwIfAborted();
        if (this.isClosed) throw new Error('The solver is closed');
        const outcome = await this.outcome(program, signal);
        if (outcome === 'aborted') {
            signal?.throwIfAborted();
            throw new Error('A solve was given up without a signal');
        }
        if ('error' in outcome) throw outcome.error;
        return outcome.result;
    }

    private outcome(program: IntegerProgram, signal: AbortSignal | undefined): Promise<Outcome> {
        return new Promise(resolve => {
            const id = this.nextId++;
            const abort = (): void => { this.abandon(id, 'aborted'); };
            const watchdog = setTimeout(() => { this.abandon(id, { result: NO_ANSWER }); }, 1000 * (program.maxSeconds + this.graceSeconds));
            signal?.addEventListener('abort', abort, { once: true });
            this.waiting.set(id, {
                program,
                settle: outcome => {
                    clearTimeout(watchdog);
                    signal?.removeEventListener('abort', abort);
                    this.waiting.delete(id);
                    // an idle solver does not keep its process alive
                    if (this.waiting.size === 0) this.worker?.unref();
                    resolve(outcome);
                },
            });
            this.start();
            this.worker?.ref();
            this.post(id, program);
        });
    }

    private start(): void {
        if (this.worker || this.isClosed) return;
        const worker = new Worker(this.workerPath, { workerData: { wasmPath: this.wasmPath } satisfies WorkerData });
        worker.on('message', (answer: WorkerAnswer) => {
            const waiting = this.waiting.get(answer.id);
            waiting?.settle('result' in answer ? { result: answer.result } : { error: new Error(`The solver failed: ${answer.error}`) });
        });
        const lost = (error: Error): void => {
            if (this.worker !== worker) return;
            this.worker = undefined;
            this.rejectAll(error);
        };
        worker.on('error', lost);
        worker.on('exit', code => { lost(new Error(`The solver thread ended with code ${code}`)); });
        worker.unref();
        this.worker = worker;
    }

    /** Gives one solve up with its thread; what else waits is solved by the next thread. */
    private abandon(id: number, outcome: Outcome): void {
        const waiting = this.waiting.get(id);
        if (!waiting) return;
        void this.stop();
        waiting.settle(outcome);
        if (this.waiting.size === 0) return;
        this.start();
        this.worker?.ref();
        for (const [otherId, other] of this.waiting) this.post(otherId, other.program);
    }

    private post(id: number, program: IntegerProgram): void {
        this.worker?.postMessage({ id, program } satisfies WorkerTask);
    }

    private rejectAll(error: Error): void {
        for (const waiting of [...this.waiting.values()]) waiting.settle({ error });
    }

    private async stop(): Promise<void> {
        const worker = this.worker;
        this.worker = undefined;
        await worker?.terminate();
    }
}
