import type { ExecuteCommandHandler } from 'langium/lsp';
import { Cancellation } from 'langium';
import type { IntegerSolver } from '../../../language/src/engines/stock/integer-solver.js';
import type { HotroomServerSharedServices } from '../services.js';
import { Comparisons } from './comparison-command.js';
import { CutLists } from './cut-list-command.js';
import { Reviews } from './review-command.js';
import { listJobs } from './jobs-command.js';

/** Says how far a long request is. */
export type Progress = (message: string, percentage?: number) => void;

const titles: ReadonlyMap<string, string> = new Map([['hotroom.server.cutList', 'Cut list'], ['hotroom.server.compare', 'Comparison'], ['hotroom.server.review', 'Review']]);
type Answer = (argument: unknown, token: Cancellation.CancellationToken, progress: Progress) => Promise<unknown>;

/** Commands any editor can send. Each checks its arguments itself. */
export class Commands implements ExecuteCommandHandler {
    private readonly byName: ReadonlyMap<string, Answer>;

    constructor(services: HotroomServerSharedServices, solver: IntegerSolver | undefined) {
        const cutLists = new CutLists(services, solver);
        const comparisons = new Comparisons(services);
        const reviews = new Reviews(services);
        this.byName = new Map<string, Answer>([
            ['hotroom.server.cutList', cutLists.make.bind(cutLists)],
            ['hotroom.server.compare', comparisons.compare.bind(comparisons)],
            ['hotroom.server.review', reviews.make.bind(reviews)],
            ['hotroom.server.jobs', () => listJobs(services)],
            ['hotroom.server.revisionText', comparisons.revisionText.bind(comparisons)],
        ]);
    }

    /** What a command is called where its progress is shown. */
    titleOf(name: string): string { return titles.get(name) ?? 'Hotroom'; }

    get commands(): string[] { return [...this.byName.keys()]; }

    async executeCommand(name: string, args: readonly unknown[], token = Cancellation.CancellationToken.None, progress: Progress = () => undefined): Promise<unknown> {
        return this.byName.get(name)?.(args[0], token, progress);
    }
}
