import { minus, type Length } from '../../core/length.js';
import { tightShortfall, type HeadroomTerm } from '../../engines/shell/headroom.js';
import { areFreeSidesUnstated } from '../free-sides.js';
import type { RuleInput } from '../rule.js';

export interface MissingHeadroom { readonly governing: HeadroomTerm; readonly available: Length; readonly isTight: boolean }

/** What is missing of the height to put the room up. That ceiling panels come up between built-in walls is left out where no side is named free: that has its own finding. */
export function missingHeadroom({ job, results }: RuleInput): MissingHeadroom | undefined {
    const headroom = results.shell?.result.headroom;
    if (headroom?.available === undefined) return undefined;
    const terms = headroom.terms.filter(({ kind }) => kind !== 'ceiling-way-up' || !areFreeSidesUnstated(job));
    const governing = terms.reduce<HeadroomTerm | undefined>((most, term) => most && most.height >= term.height ? most : term, undefined);
    if (!governing || governing.height <= headroom.available) return undefined;
    return { governing, available: headroom.available, isTight: minus(governing.height, headroom.available) < tightShortfall };
}


/** Why a height is needed, in trade words. */
export function showTerm(term: HeadroomTerm): string {
    switch (term.kind) {
        case 'ceiling-joint': return `the leaves of ${term.joint?.[0] ?? 'the ceiling'} and ${term.joint?.[1] ?? 'its neighbour'} rise while their joint is interlocked`;
        case 'tilt-up': return 'a wall panel tilts up over its corner';
        case 'lift-over-plate': return 'a wall panel is lifted 1" over the base plate';
        case 'ceiling-run-in': return 'ceiling panels are run in over the wall tops';
        case 'ceiling-way-up': return 'ceiling panels come up tilted between the walls';
        default: return term.kind satisfies never;
    }
}
