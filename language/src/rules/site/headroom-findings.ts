import type { HeadroomTerm } from '../../engines/shell/headroom.js';

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
