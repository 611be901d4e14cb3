import { inSquareInches } from '../core/length.js';
import type { Results } from '../assembly/results.js';
import type { Job } from '../model/job.js';
import { amountFact, lengthFact, wordsFact } from './fact.js';
import type { FactProvider } from './facts-tree.js';

/** `⟨vent⟩.…` and `air.…`. */
export function airFacts(_job: Job, results: Results): readonly FactProvider[] {
    const air = results.air;
    if (!air) return [];
    return [
        ...air.vents.flatMap(({ name, block, vent }): FactProvider[] => [
            amountFact(`${name}.gross_area`, 'gross area', 'in2', () => vent && inSquareInches(vent.gross), () => ({ because: [block.values.size] })),
            amountFact(`${name}.free_area`, 'free area', 'in2', () => vent && inSquareInches(vent.free), () => ({ because: [block.values.size, block.values.free], how: block.values.free ? `${block.values.free.value} % of the opening` : 'an open hole' })),
            wordsFact(`${name}.role`, 'intake or exhaust', () => vent?.role, () => ({ because: [block.values.role ?? block.name] })),
            lengthFact(`${name}.lower_edge`, 'lower edge over the floor', () => vent?.lowerEdge, () => ({ because: [block.values.bottom ?? block.values.below_ceiling] })),
        ]),
        amountFact('air.intake', 'free intake area', 'in2', () => inSquareInches(air.paths.free.intake), () => ({ because: air.vents.map(({ block }) => block.head) })),
        amountFact('air.exhaust', 'free exhaust area', 'in2', () => inSquareInches(air.paths.free.exhaust), () => ({ because: air.vents.map(({ block }) => block.head) })),
        amountFact('air.under_doors', 'area under the doors', 'in2', () => inSquareInches(air.paths.underDoorsTotal), () => ({ because: results.doors.map(({ model }) => model.head) })),
    ];
}
