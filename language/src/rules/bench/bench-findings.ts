import type { Finding, Fix } from '../../core/finding.js';
import type { Length } from '../../core/length.js';
import type { Span } from '../../core/span.js';
import type { BenchProblem, BenchProblemKind } from '../../engines/benches/bench-problem.js';
import type { BenchLayout } from '../../engines/benches/bench-result.js';
import type { Block } from '../../model/block.js';
import { benchesAstray, benchesOutOfPlace } from '../astray.js';
import { writtenLength } from '../fixes.js';
import type { RuleInput } from '../rule.js';

export interface BenchCase<K extends BenchProblemKind> {
    readonly problem: Extract<BenchProblem, { readonly kind: K }>;
    readonly block: Block<'bench'>;
    readonly name: string;
}

/** Turns the problems of one kind that the bench engine found into findings. */
export function* benchFindings<K extends BenchProblemKind>(input: RuleInput, kind: K, make: (found: BenchCase<K>) => Finding | undefined): Generator<Finding> {
    const benches = input.results.benches;
    if (!benches) return;
    const astray = kind === 'in-front-of-not-higher' ? benchesOutOfPlace(input) : followsFromPlace.has(kind) ? benchesAstray(input) : undefined;
    for (const problem of benches.result.problems) {
        const block = benches.blocks.get(problem.bench);
        if (problem.kind !== kind || !block || !isStretchKnown(block) || astray?.has(problem.bench)) continue;
        const finding = make({ problem: problem as Extract<BenchProblem, { readonly kind: K }>, block, name: problem.bench });
        if (finding) yield finding;
    }
}

/** What a bench that stands out of place, or before a tier no higher than itself, brings with it: its place has the finding. */
const followsFromPlace: ReadonlySet<BenchProblemKind> = new Set(['across-opening', 'climb-too-high', 'tiers-overlap', 'leg-through-bench', 'span-without-leg']);

/** A length or place that is being typed is not read, and the engine then lays the bench out from wall to wall: nothing is said about it until it is. */
const isStretchKnown = ({ written, values }: Block<'bench'>): boolean => (values.length !== undefined || !written.has('length')) && (values.from !== undefined || !written.has('from'));

/** A bench that has its place, with its text. */
export interface PlacedBenchBlock {
    readonly layout: BenchLayout;
    readonly block: Block<'bench'>;
    readonly name: string;
}

/** Benches that have a place they can be judged in, in the order written. */
export function placedBenches(input: RuleInput): readonly PlacedBenchBlock[] {
    const { benches } = input.results;
    const astray = benchesAstray(input);
    return benches?.result.benches.flatMap((layout): PlacedBenchBlock[] => {
        const block = benches.blocks.get(layout.name);
        return block && isStretchKnown(block) && !astray.has(layout.name) ? [{ layout, block, name: layout.name }] : [];
    }) ?? [];
}

/** Whether every bench of the job has its place: only then is it known what stands between the others and the floor or the ceiling. */
export const areAllPlaced = ({ job, results }: RuleInput): boolean => job.isWhole && job.benches.length === (results.benches?.result.benches.length ?? 0);

/** Where the stretch of a bench along its wall is written. */
export const stretchSpan = ({ values: { length, from }, head }: Block<'bench'>): Span => length?.span ?? from?.span ?? head;

/** The bench build as the bench names it, with the block that describes it. */
export const buildOf = (block: Block<'bench'>): Block<'bench_build'> | undefined => block.values.build?.value.block;

export const setDepth = (span: Span, length: Length, { job, show }: RuleInput): Fix => ({ title: `Set the depth to ${show(length)}`, safety: 'review', edits: [{ span, newText: writtenLength(length, job.unit) }] });
