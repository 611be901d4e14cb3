import loadHighs from 'highs';
import type { IntegerProgram, IntegerResult, IntegerSolver } from '../../../language/src/engines/stock/integer-solver.js';

// the package declares itself CommonJS while its module build exports the loader itself, so the declared type is one `default` too deep
const load = loadHighs as unknown as typeof loadHighs.default;

export type Highs = Awaited<ReturnType<typeof load>>;

/** Loads the WebAssembly build of HiGHS. `wasmPath` names the binary when it does not lie beside its loader, as in a bundle. */
export const loadSolver = (wasmPath?: string): Promise<Highs> =>
    load(wasmPath === undefined ? {} : { locateFile: () => wasmPath });

/** Solves one program; blocks the thread until it is solved or a limit is reached. */
export function solveProgram(highs: Highs, program: IntegerProgram): IntegerResult {
    const columns = program.cost.length;
    const integer = highs.constants.variableType.integer;
    return highs.withModel({
        numCols: columns,
        numRows: program.rowLower.length,
        colCost: program.cost,
        colLower: program.cost.map(() => 0),
        colUpper: program.upper,
        rowLower: program.rowLower,
        rowUpper: program.rowUpper.map(limit => limit === Infinity ? highs.infinity : limit),
        matrix: {
            format: 'csc',
            numCols: columns,
            numRows: program.rowLower.length,
            starts: program.starts,
            indices: program.rows,
            values: program.values,
        },
        integrality: program.cost.map(() => integer),
    }, (model): IntegerResult => {
        model.options.set({
            output_flag: false,
            mip_rel_gap: 0,
            mip_abs_gap: program.absoluteGap,
            mip_max_nodes: program.maxNodes,
            time_limit: program.maxSeconds,
        });
        const { modelStatus } = model.run();
        const status = highs.constants.modelStatus;
        if (modelStatus === status.infeasible || modelStatus === status.unboundedOrInfeasible) {
            return { status: 'infeasible', objective: undefined, bound: Infinity, values: undefined };
        }
        const stopped = [status.timeLimit, status.iterationLimit, status.solutionLimit, status.objectiveTarget, status.interrupted];
        const isOptimal = modelStatus === status.optimal;
        if (!isOptimal && !stopped.some(one => one === modelStatus)) return { status: 'failed', objective: undefined, bound: -Infinity, values: undefined };
        const hasSolution = model.info.get('primal_solution_status') === highs.constants.solutionStatus.feasible;
        return {
            status: isOptimal ? 'optimal' : 'limit',
            objective: hasSolution ? model.getObjectiveValue() : undefined,
            bound: Number(model.info.get('mip_dual_bound')),
            values: hasSolution ? Array.from(model.getSolution().colValue) : undefined,
        };
    });
}

/**
 * HiGHS in this thread, for the command line and tests. A solve blocks the thread, so a signal is looked at before and after it only;
 * where that matters use `HighsInWorker`.
 */
export class HighsInProcess implements IntegerSolver {
    private loading: Promise<Highs> | undefined;
    private readonly wasmPath: string | undefined;

    /** @param wasmPath path of highs.wasm when it does not lie beside the loader of the package */
    constructor(wasmPath?: string) {
        this.wasmPath = wasmPath;
    }

    /** Loads the solver ahead of the first plan. */
    async warm(): Promise<void> {
        await this.load();
    }

    async solve(program: IntegerProgram, signal?: AbortSignal): Promise<IntegerResult> {
        signal?.throwIfAborted();
        const highs = await this.load();
        await this.pause();
        signal?.throwIfAborted();
        const result = solveProgram(highs, program);
        await this.pause();
        signal?.throwIfAborted();
        return result;
    }

    pause(): Promise<void> {
        return new Promise(resolve => { setImmediate(resolve); });
    }

    private load(): Promise<Highs> {
        this.loading ??= loadSolver(this.wasmPath);
        return this.loading;
    }
}
