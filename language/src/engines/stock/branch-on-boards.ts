import { linearBound, type LinearBound } from './column-generation.js';
import { countsOfTotal, dearerCounts, unevenClass, wholeCounts } from './board-counts.js';
import { cheapest } from './greedy.js';
import { createValueTable, type ValueTable } from './knapsack.js';
import { MasterProgram, type BoardCounts } from './master-program.js';
import { choosePatterns } from './pattern-choice.js';
import { boardClass, fullCost, solutionCost, type CuttingProblem, type Solution } from './problem.js';
import { realise, type Effort, type Realised } from './realise.js';
import type { ReachableTotals } from './reachable-totals.js';
import type { SearchHost } from './search-host.js';

/** Limits that are the same on every machine; together they come to about two seconds where the engine was tuned. */
const MOST_REGIONS = 6000;
const MOST_WORK = 8e8;
const MOST_SOLVER_SECONDS = 1.5;
/** While the plan is further than this from the bound, better plans are looked for out of order at these stages. */
const FAR = 0.001;
const FIRST_STAGE = { regions: 200, work: 1e8 };
const MOST_DEARER = 2;
/** Whole counts of the bound's own total that are looked at beside a linear solution, and splits a dive makes at most. */
const MOST_POINTS = 5;
const MOST_DEPTH = 25;

interface Region {
    readonly bound: LinearBound;
    /** No plan in the region costs less; a total boards can have. */
    readonly total: number;
    readonly parent: Region | undefined;
}

export interface BranchResult {
    readonly solution: Solution;
    /** No plan costs less, in cost units. */
    readonly lowerBound: number;
    /** The linear bound of the whole problem, before rounding up. */
    readonly linearBound: number;
    /** Linear programs bounded, and integer programs given to the solver. */
    readonly regions: number;
    readonly programs: number;
}

/**
 * Best-first search over how many boards of each length are bought. The linear bound of a region rises quickly once these counts are
 * whole, and with the counts fixed a solver finds the cuts, or shows that there are none, in moments.
 */
export class BranchOnBoards {
    private readonly master: MasterProgram;
    private readonly tableFor: (values: readonly number[]) => ValueTable;
    private open: Region[] = [];
    /** Regions the solver could not settle; the bound stays at the least of them. */
    private unsettled = Infinity;
    /** What became of boards that were looked at already. */
    private readonly outcomes = new Map<string, { readonly outcome: Realised['outcome']; readonly effort: Effort }>();
    private solverSeconds = 0;
    private regions = 0;
    private work = 0;
    private programs = 0;
    private solution: Solution;
    private cost: number;

    constructor(
        private readonly problem: CuttingProblem, start: Solution, private readonly totals: ReachableTotals, private readonly host: SearchHost,
    ) {
        this.master = new MasterProgram(problem);
        this.tableFor = createValueTable(problem);
        this.solution = start;
        this.cost = solutionCost(problem, start);
        for (const { pattern } of start) this.master.add(pattern);
    }

    async run(): Promise<BranchResult> {
        const pieces = this.problem.types.reduce((total, type) => total + type.demand, 0);
        const root = this.region({
            least: this.problem.classes.map(() => 0),
            most: this.problem.classes.map(board => Math.min(board.limit, pieces, fullCost(board) > 0 ? Math.floor(this.cost / fullCost(board)) : pieces)),
        }, undefined);
        if (root.total < this.cost) await this.dive(root);
        let stage = FIRST_STAGE;
        while (this.open.length > 0) {
            await this.pause();
            const next = this.takeBest();
            if (next.total >= this.cost || this.isSpent()) {
                this.open.push(next);
                break;
            }
            if ((this.regions >= stage.regions || this.work >= stage.work) && this.cost - next.total > FAR * this.cost) {
                stage = { regions: this.regions * 3, work: this.work * 3 };
                await this.dive(next);
                continue;
            }
            const chosen = unevenClass(next.bound);
            if (chosen === undefined) await this.settle(next, wholeCounts(next.bound), 'thorough');
            else this.open.push(...this.split(next, chosen));
        }
        return {
            solution: this.solution,
            lowerBound: Math.min(this.cost, this.unsettled, ...this.open.map(region => region.total)),
            linearBound: Number(root.bound.scaledBound) / root.bound.scale,
            regions: this.regions,
            programs: this.programs,
        };
    }

    private isSpent(): boolean {
        return this.solverSeconds >= MOST_SOLVER_SECONDS || this.regions >= MOST_REGIONS || this.work >= MOST_WORK || this.host.isLate();
    }

    private async pause(): Promise<void> {
        await this.host.solver.pause?.();
        this.host.signal?.throwIfAborted();
    }

    /**
     * Looks for a good plan early on: first among whole counts that cost just the bound, then by following the better half of each
     * split down to whole counts. The other halves stay open.
     */
    private async dive(from: Region): Promise<void> {
        if (await this.tryPoints(from)) return;
        let next: Region | undefined = from;
        for (let depth = 0; next; depth++) {
            await this.pause();
            if (this.host.isLate() || depth > MOST_DEPTH) {
                this.open.push(next);
                return;
            }
            const chosen = unevenClass(next.bound);
            if (chosen === undefined) return this.settle(next, wholeCounts(next.bound), 'quick');
            const halves: Region[] = this.split(next, chosen).sort((a, b) => a.total - b.total);
            next = halves.shift();
            this.open.push(...halves);
        }
    }

    /** Tries the first boards that cost just the region's bound and whose own bound is no higher; true when they do. */
    private async tryPoints(region: Region): Promise<boolean> {
        for (const counts of countsOfTotal(this.problem, region.bound, region.total).slice(0, MOST_POINTS)) {
            await this.pause();
            if (this.isSpent() || this.outcomes.has(counts.join())) continue;
            const point = this.region({ least: counts, most: counts }, region);
            if (point.total <= region.total) return await this.realise(point, counts, region.total, 'quick') === 'found';
        }
        return false;
    }

    private region(counts: BoardCounts, parent: Region | undefined): Region {
        const bound = linearBound(this.problem, this.master, counts, this.tableFor, this.host.isLate, parent?.bound);
        this.regions++;
        this.work += bound.work;
        return { bound, total: Math.max(parent?.total ?? 0, this.totals.atLeast(ceilDivided(bound.scaledBound, BigInt(bound.scale)))), parent };
    }

    /** The region of least bound; the one split last among equals, since it is nearest to whole counts. */
    private takeBest(): Region {
        let best = this.open.length - 1;
        for (let at = best - 1; at >= 0; at--) if ((this.open[at]?.total ?? Infinity) < (this.open[best]?.total ?? Infinity)) best = at;
        const [taken] = this.open.splice(best, 1);
        if (!taken) throw new Error('No region is open');
        return taken;
    }

    /** The regions with fewer and with more boards of one class than the linear solution has. */
    private split(region: Region, chosen: number): Region[] {
        const { boards, counts } = region.bound;
        const below = Math.floor(boards[chosen] ?? 0);
        return [
            ...this.usefulRegion({ least: counts.least, most: replaced(counts.most, chosen, below) }, region),
            ...this.usefulRegion({ least: replaced(counts.least, chosen, below + 1), most: counts.most }, region),
        ];
    }

    private usefulRegion(counts: BoardCounts, parent: Region): Region[] {
        if (counts.least.some((least, at) => least > (counts.most[at] ?? 0))) return [];
        const region = this.region(counts, parent);
        return region.total < this.cost ? [region] : [];
    }

    /** Looks for the cuts of these very boards; when there are none, the rest of the region is split around them. */
    private async settle(region: Region, whole: readonly number[], effort: Effort): Promise<void> {
        const total = whole.reduce((cost, count, at) => cost + count * fullCost(boardClass(this.problem, at)), 0);
        const outcome = await this.realise(region, whole, total, effort);
        // other boards of the region may cost less when these are not what its linear solution asks for
        if (outcome === 'found' && total <= region.total) return;
        if (outcome === 'unknown' && effort === 'quick') {
            // only a plan was wanted here; the region waits for its turn in the order of bounds
            this.open.push(region);
            return;
        }
        if (outcome === 'unknown') {
            this.unsettled = Math.min(this.unsettled, region.total);
            await this.tryDearer(region, whole, total);
        }
        let { least, most } = region.bound.counts;
        whole.forEach((count, at) => {
            this.open.push(
                ...this.usefulRegion({ least, most: replaced(most, at, count - 1) }, region),
                ...this.usefulRegion({ least: replaced(least, at, count + 1), most }, region),
            );
            least = replaced(least, at, count);
            most = replaced(most, at, count);
        });
    }

    /** Where the cuts of some boards were not found, those that add least may still beat the plan there is. */
    private async tryDearer(region: Region, whole: readonly number[], total: number): Promise<void> {
        const root = { ...region, parent: undefined, bound: boundsAround(region).at(-1) ?? region.bound };
        for (const { boards, extra } of dearerCounts(this.problem, whole).slice(0, MOST_DEARER)) {
            if (total + extra >= this.cost || this.isSpent()) return;
            await this.realise(root, boards, total + extra, 'quick', region.bound);
        }
    }

    /**
     * Looks for the cuts of some boards, unless that was done before.
     * @param region one that holds these boards
     * @param near the linear solution to start from, when it is not the region's own
     */
    private async realise(region: Region, boards: readonly number[], total: number, effort: Effort, near = region.bound): Promise<Realised['outcome']> {
        const key = boards.join();
        const before = this.outcomes.get(key);
        if (before && (before.outcome !== 'unknown' || before.effort !== 'quick' || effort === 'quick')) return before.outcome;
        const patterns = choosePatterns(this.problem, this.master.patterns, boundsAround(region), total, this.tableFor);
        const left = MOST_SOLVER_SECONDS - this.solverSeconds;
        const { outcome, plan, programs, seconds } = await realise(this.problem, near, boards, patterns, before ? 'remaining' : effort, this.host, left);
        this.outcomes.set(key, { outcome, effort });
        this.programs += programs;
        this.solverSeconds += seconds;
        this.solution = cheapest(this.problem, [this.solution, plan]) ?? this.solution;
        this.cost = solutionCost(this.problem, this.solution);
        return outcome;
    }
}

/** The bounds that hold for a region: its own, then those of the regions around it. */
function boundsAround(region: Region): readonly [LinearBound, ...LinearBound[]] {
    const wider: LinearBound[] = [];
    for (let around = region.parent; around; around = around.parent) wider.push(around.bound);
    return [region.bound, ...wider];
}

const replaced = (values: readonly number[], at: number, value: number): number[] => values.map((old, index) => index === at ? value : old);

const ceilDivided = (amount: bigint, unit: bigint): number => Number(amount <= 0n ? 0n : (amount + unit - 1n) / unit);
