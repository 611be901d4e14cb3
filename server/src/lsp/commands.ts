import type { ExecuteCommandHandler } from 'langium/lsp';
import { Cancellation } from 'langium';
import type { IntegerSolver } from '../../../language/src/engines/stock/integer-solver.js';
import type { HotroomServerSharedServices } from '../services.js';
import { CutLists } from './cut-list-command.js';

/** Says how far a long request is. */
export type Progress = (message: string, percentage?: number) => void;

/** Commands any editor can send. Each checks its arguments itself. */
export class Commands implements ExecuteCommandHandler {
    private readonly cutLists: CutLists;
    private readonly byName: ReadonlyMap<string, (argument: unknown, token: Cancellation.CancellationToken, progress: Progress) => Promise<unknown>>;

    constructor(services: HotroomServerSharedServices, solver: IntegerSolver | undefined) {
        this.cutLists = new CutLists(services, solver);
        this.byName = new Map([['hotroom.server.cutList', this.cutLists.make.bind(this.cutLists)]]);
    }

    get commands(): string[] { return [...this.byName.keys()]; }

    async executeCommand(name: string, args: readonly unknown[], token = Cancellation.CancellationToken.None, progress: Progress = () => undefined): Promise<unknown> {
        return this.byName.get(name)?.(args[0], token, progress);
    }
}
