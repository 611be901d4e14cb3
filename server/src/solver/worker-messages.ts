import type { IntegerProgram, IntegerResult } from '../../../language/src/engines/stock/integer-solver.js';

/** Both ends of the solver thread are of one build, so its messages are not checked. */
export interface WorkerData { readonly wasmPath: string | undefined }
export interface WorkerTask { readonly id: number; readonly program: IntegerProgram }
export type WorkerAnswer =
    | { readonly id: number; readonly result: IntegerResult }
    | { readonly id: number; readonly error: string };
