import { linearBound, type LinearBound } from './column-generation.js';
import { cheapest } from './greedy.js';
import { createValueTable, type ValueTable } from './knapsack.js';
import { keyOf, MasterProgram, type BoardCounts } from './master-program.js';
import { patternsWithin } from './patterns.js';
import { boardClass, fullCost, solutionCost, type CuttingProblem, type Pattern, type Solution } from './problem.js';
import { realise, type Effort, type PatternChoice } from './realise.js';
import type { ReachableTotals } from './reachable-totals.js';
import type { SearchHost } from './search-host.js';

/** Limits that are the same on every machine; together they come to about two seconds where the engine was tuned. */
const MOST_REGIONS = 6000;
const MOST_WORK = 1.5e9;
const MOST_SOLVER_SECONDS = 1.5;
/** While the plan is further than this from the bound, better plans are looked for out of order at these stages. */
const FAR = 0.001;
const FIRST_STAGE = { regions: 200, work: 1e8 };
const MOST_PATTERNS = 6000;
const CLOSEST_PATTERNS = 1500;
/** How near a whole number a count of boards has to be to be taken for one. */
const WHOLE = 1e-6;

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

    /** Follows the better half of each split down to whole counts, for a good plan early on; the other halves stay open. */
    private async dive(from: Region): Promise<void> {
        for (let next: Region | undefined = from; next;) {
            await this.pause();
            if (this.host.isLate()) {
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
        const { outcome, plan, programs, seconds } = await realise(this.problem, region.bound, whole, this.patternsFor(region, total), effort, this.host);
        this.programs += programs;
        this.solverSeconds += seconds;
        this.solution = cheapest(this.problem, [this.solution, plan]) ?? this.solution;
        this.cost = solutionCost(this.problem, this.solution);
        if (outcome === 'found') return;
        if (outcome === 'unknown' && effort === 'quick') {
            // only a plan was wanted here; the region waits for its turn in the order of bounds
            this.open.push(region);
            return;
        }
        if (outcome === 'unknown') this.unsettled = Math.min(this.unsettled, region.total);
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

    /** Every pattern a plan of this total could hold, by the bounds of the region and of all that contain it; undefined when too many. */
    private allPatterns(region: Region, total: number): readonly Pattern[] | undefined {
        for (const { bound } of [rootOf(region), region]) {
            const patterns = patternsWithin(this.problem, bound, this.tableFor(bound.values), allowanceFor(bound, total), MOST_PATTERNS,
                pattern => this.isWithin(pattern, region, total));
            if (patterns) return patterns;
        }
        return undefined;
    }

    private isWithin(pattern: Pattern, region: Region, total: number): boolean {
        for (let wider: Region | undefined = region; wider; wider = wider.parent) {
            if (loss(this.problem, wider.bound, pattern) > allowanceFor(wider.bound, total)) return false;
        }
        return true;
    }

    private patternsFor(region: Region, total: number): PatternChoice {
        const root = rootOf(region).bound;
        const all = this.allPatterns(region, total);
        const basis = region.bound.basis.map(({ pattern }) => pattern);
        const known = new Set(basis.map(keyOf));
        const unknown = (pattern: Pattern): boolean => !known.has(keyOf(pattern)) && known.add(keyOf(pattern)).size > 0;
        const others = this.master.patterns.filter(pattern => this.isWithin(pattern, region, total) && unknown(pattern));
        const close = (all ?? this.closestPatterns(root, total)).filter(unknown);
        const likeliest = [...others, ...close].map(pattern => ({ pattern, loss: loss(this.problem, root, pattern) })).sort((a, b) => a.loss - b.loss);
        return { met: [...basis, ...others], near: [...basis, ...likeliest.map(({ pattern }) => pattern)], all };
    }

    /** Where all patterns are too many: those that lose no more than some part of what they may. */
    private closestPatterns(bound: LinearBound, total: number): readonly Pattern[] {
        const table = this.tableFor(bound.values);
        for (let allowance = allowanceFor(bound, total) / 2; allowance >= 1; allowance /= 2) {
            const patterns = patternsWithin(this.problem, bound, table, Math.floor(allowance), CLOSEST_PATTERNS);
            if (patterns) return patterns;
        }
        return [];
    }
}

/** The class whose count of boards is furthest from whole, among those that can be split there; undefined when none can. */
function unevenClass({ boards, counts }: LinearBound): number | undefined {
    let chosen: number | undefined;
    let least = 0.5 - WHOLE;
    boards.forEach((count, at) => {
        const floor = Math.floor(count);
        const fromHalf = Math.abs(count - floor - 0.5);
        // a limit the linear program had to break cannot be split at
        if (fromHalf < least - 1e-9 && floor >= (counts.least[at] ?? 0) && floor < (counts.most[at] ?? 0)) [chosen, least] = [at, fromHalf];
    });
    return chosen;
}

const wholeCounts = ({ boards, counts }: LinearBound): number[] =>
    boards.map((count, at) => Math.min(counts.most[at] ?? 0, Math.max(counts.least[at] ?? 0, Math.round(count))));

function rootOf(region: Region): Region {
    let root = region;
    while (root.parent) root = root.parent;
    return root;
}

/** What a plan of this total may lose to patterns that are worth less than their boards. */
const allowanceFor = (bound: LinearBound, total: number): number => Number(BigInt(total) * BigInt(bound.scale) - bound.scaledBound);

const loss = (problem: CuttingProblem, bound: LinearBound, pattern: Pattern): number =>
    fullCost(boardClass(problem, pattern.classIndex)) * bound.scale + (bound.excess[pattern.classIndex] ?? 0)
    - pattern.counts.reduce((worth, count, type) => worth + count * (bound.values[type] ?? 0), 0);

const replaced = (values: readonly number[], at: number, value: number): number[] => values.map((old, index) => index === at ? value : old);

const ceilDivided = (amount: bigint, unit: bigint): number => Number(amount <= 0n ? 0n : (amount + unit - 1n) / unit);
