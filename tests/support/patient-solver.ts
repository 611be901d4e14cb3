import type { IntegerProgram, IntegerSolver } from '../../language/src/engines/stock/integer-solver.js';
import { HighsInProcess } from '../../server/src/solver/highs.js';

/** How much longer a program may take where other tests share the processors; its limit of nodes, which is the same on every machine, stays. */
const PATIENCE = 60;

/** The solver for tests of what is proven: how long it takes is a matter of the benchmarks. */
export class PatientSolver implements IntegerSolver {
    private readonly solver = new HighsInProcess();
    solve(program: IntegerProgram, signal?: AbortSignal): ReturnType<IntegerSolver['solve']> { return this.solver.solve({ ...program, maxSeconds: program.maxSeconds * PATIENCE }, signal); }
}
