import type { Finding, Fix } from '../../core/finding.js';
import type { Length } from '../../core/length.js';
import type { Span } from '../../core/span.js';
import type { BenchProblem, BenchProblemKind } from '../../engines/benches/bench-problem.js';
import type { Block } from '../../model/block.js';
import type { RuleInput } from '../rule.js';

export interface BenchCase<K extends BenchProblemKind> {
    readonly problem: Extract<BenchProblem, { readonly kind: K }>;
    readonly block: Block<'bench'>;
    readonly name: string;
}

/** Turns the problems of one kind that the bench engine found into findings. */
export function* benchFindings<K extends BenchProblemKind>({ results }: RuleInput, kind: K, make: (found: BenchCase<K>) => Finding | undefined): Generator<Finding> {
    const benches = results.benches;
    if (!benches) return;
    for (const problem of benches.result.problems) {
        const block = benches.blocks.get(problem.bench);
        if (problem.kind !== kind || !block) continue;
        const finding = make({ problem: problem as Extract<BenchProblem, { readonly kind: K }>, block, name: problem.bench });
        if (finding) yield finding;
    }
}

export const setDepth = (span: Span, length: Length, { show }: RuleInput): Fix => ({ title: `Set the depth to ${show(length)}`, safety: 'review', edits: [{ span, newText: show(length) }] });
