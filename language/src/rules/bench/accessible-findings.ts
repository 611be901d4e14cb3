import { endFloors, type EndFloor } from '../../engines/benches/end-floor.js';
import { strictest, type ClauseKey, type Governing } from '../../rule-sets/index.js';
import type { RuleInput } from '../rule.js';
import { placedBenches, type PlacedBenchBlock } from './bench-findings.js';

/** What the published rule sets of the job ask of an accessible bench; what practice says of other benches is left out. */
export function accessibleClause<K extends ClauseKey>({ ruleSets }: RuleInput, key: K): Governing<K> | undefined {
    const rule = strictest(ruleSets, key, { without: ['upper_bench'] });
    return rule?.clause.citation.kind === 'standard' ? rule : undefined;
}

export const accessibleBenches = (input: RuleInput): readonly PlacedBenchBlock[] => placedBenches(input).filter(({ layout }) => layout.isAccessible);

/** Clear floor at the ends of accessible benches; nothing while no rule set asks for it. */
export function accessibleFloors(input: RuleInput): readonly (PlacedBenchBlock & { readonly floors: readonly EndFloor[] })[] {
    const space = accessibleClause(input, 'floor.clear-space');
    const { inside, things } = input.results;
    if (!space || !inside) return [];
    return accessibleBenches(input).map(bench => ({ ...bench, floors: endFloors(bench.layout, space.figure, things, inside) }));
}
