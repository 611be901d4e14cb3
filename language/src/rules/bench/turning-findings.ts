import { turningSpaceOf } from '../../assembly/access.js';
import type { Span } from '../../core/span.js';
import type { Length } from '../../core/length.js';
import { takenFloor } from '../../engines/access/free-floor.js';
import type { TShape } from '../../engines/access/turning-t.js';
import type { Governing } from '../../rule-sets/index.js';
import type { RuleInput } from '../rule.js';
import { accessibleClause } from './accessible-findings.js';
import { areAllPlaced } from './bench-findings.js';

export interface TurningDemand {
    readonly circle: Governing<'floor.turning-circle'>;
    readonly t?: TShape;
    /** What the search is asked. */
    readonly ask: { readonly diameter: Length; readonly t?: TShape };
}

/** What the rule sets ask for where a wheelchair turns; nothing while it is not known what stands on the floor. */
export function turningDemand(input: RuleInput): TurningDemand | undefined {
    const circle = accessibleClause(input, 'floor.turning-circle');
    const { job, results } = input;
    if (!circle || !areAllPlaced(input) || results.heaters.length !== job.heaters.length || results.heaters.some(({ heater }) => !heater)) return undefined;
    const [square, arm] = [accessibleClause(input, 'floor.turning-square'), accessibleClause(input, 'floor.turning-arm')];
    const t = square && arm && { square: square.figure.value, arm: arm.figure.value };
    return { circle, ask: { diameter: circle.figure.value, ...(t && { t }) }, ...(t && { t }) };
}

/** Benches and heaters without one of which there would be a turning space. */
export function removalsThatCure({ results }: RuleInput, ask: TurningDemand['ask']): readonly { readonly kind: 'bench' | 'heater'; readonly name: string; readonly at: Span }[] {
    const { floor, things, benches, heaters, inside } = results;
    if (!floor || !inside) return [];
    const cures = (isOf: (name: string, belongsTo: string | undefined) => boolean): boolean => {
        const found = turningSpaceOf({ ...floor, taken: takenFloor(things.filter(({ name, belongsTo }) => !isOf(name, belongsTo)), inside), ...ask });
        return found.circle !== undefined || found.t !== undefined;
    };
    return [
        ...[...benches?.blocks ?? []].filter(([bench]) => cures(name => name === bench || name === `${bench} back rest`)).map(([name, block]) => ({ kind: 'bench' as const, name, at: block.head })),
        ...heaters.filter(heater => cures((name, belongsTo) => name === heater.name || belongsTo === heater.name)).map(({ name, block }) => ({ kind: 'heater' as const, name, at: block.head })),
    ];
}
