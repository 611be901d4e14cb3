import type { Fix } from '../../core/finding.js';
import { showList } from '../../core/show.js';
import type { Block } from '../../model/block.js';
import { replaceValue } from '../fixes.js';
import type { RuleInput } from '../rule.js';

/** The benches that `block` can stand in front of: higher ones on a wall of its own. */
export function tiersBehind(block: Block<'bench'>, name: string, { results: { benches } }: RuleInput): { readonly cure: string; readonly fixes: readonly Fix[] } {
    const own = benches?.input.benches.find(bench => bench.name === name);
    const names = benches?.input.benches.filter(bench => own && bench.top > own.top && bench.walls.some(wall => own.walls.includes(wall))).map(bench => bench.name) ?? [];
    const stated = block.values.in_front_of;
    if (names.length === 0 || !stated) return { cure: 'No bench on its wall is higher, so leave in_front_of out.', fixes: [] };
    return { cure: `Name ${showList(names, 'or')}, which ${names.length === 1 ? 'is' : 'are'} higher on the same wall.`, fixes: names.map(other => replaceValue(`Stand in front of ${other}`, stated.span, other)) };
}
