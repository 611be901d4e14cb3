import type { AssembledFitting } from '../../assembly/fittings.js';
import { extent } from '../../core/geometry.js';
import { minus, type Length } from '../../core/length.js';
import { isKind, showBlock, type Block } from '../../model/block.js';
import { strictest, type Governing } from '../../rule-sets/index.js';
import type { RuleInput } from '../rule.js';
import { capital } from './electrical-findings.js';

/** A luminaire that reaches into the hot layer under the ceiling. */
export interface HighLight {
    readonly light: Block<'light'>;
    readonly title: string;
    readonly fitting: AssembledFitting;
    /** From the ceiling lining down to its upper edge. */
    readonly below: Length;
    /** How far below the ceiling the hot layer reaches. */
    readonly layer: Governing<'light.below-ceiling'>;
    readonly rating: Governing<'light.rating'>;
    /** The highest underside that keeps it out of the layer. */
    readonly highest: Length;
}

/** Luminaires in the hot layer, where the rule sets of the job speak of it; under the IEC rules the zones speak instead. */
export function* highLights({ results, ruleSets }: RuleInput): Generator<HighLight> {
    const layer = strictest(ruleSets, 'light.below-ceiling');
    const rating = strictest(ruleSets, 'light.rating');
    const { inside } = results;
    if (!layer || !rating || !inside || results.zones) return;
    for (const fitting of results.fittings) {
        if (!fitting.thing || !isKind(fitting.block, 'light')) continue;
        const { z } = fitting.thing.box;
        const below = minus(inside.height, z.to);
        const highest = minus(minus(inside.height, layer.figure.value), extent(z));
        if (below >= layer.figure.value || z.to > inside.height) continue;
        yield { light: fitting.block, title: capital(showBlock(fitting.block)), fitting, below, layer, rating, highest };
    }
}
