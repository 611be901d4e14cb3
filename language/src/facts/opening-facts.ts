import { inSquareInches } from '../core/length.js';
import type { Results } from '../assembly/results.js';
import type { Job } from '../model/job.js';
import { amountFact, lengthFact, wordFact } from './fact.js';
import type { FactProvider } from './facts-tree.js';

/** `⟨door⟩.…` and `⟨window⟩.…`. */
export function openingFacts(_job: Job, results: Results): readonly FactProvider[] {
    return [
        ...results.doors.flatMap(({ name, block, model, door, hinges }): FactProvider[] => [
            lengthFact(`${name}.clear_width`, 'clear width', () => door?.clearWidth, () => ({ because: [block.values.model, model.values.clear], how: 'with the leaf open at 90 degrees' })),
            wordFact(`${name}.hand`, 'hand', () => door && (door.hand.hand === 'left-hand' ? 'left_hand' : 'right_hand'), () => door ? `${door.hand.hand}, seen from ${door.hand.seenFrom}, the pull side` : '', () => ({ because: [block.values.hinge, block.values.swing] })),
            lengthFact(`${name}.over_head`, 'from the frame to the ceiling', () => door?.overHead, () => ({ because: [block.values.model, model.values.leaf] })),
            amountFact(`${name}.under_leaf`, 'air path under the leaf', 'in2', () => door && inSquareInches(door.underLeaf), () => ({ because: [model.values.bottom_gap, model.values.leaf], how: 'leaf width x bottom gap' })),
            amountFact(`${name}.hinges_needed`, 'hinges needed', '', () => hinges.needed, () => ({ because: [model.values.leaf_mass, model.values.hinge_limit], source: hinges.citation })),
        ]),
        ...results.windows.flatMap(({ name, block, model, window }): FactProvider[] => [
            lengthFact(`${name}.head`, 'upper edge of the glass', () => window?.glass.v.to, () => ({ because: [block.values.sill, model.values.glass_size], how: 'sill and height of the glass' })),
            amountFact(`${name}.glass_area`, 'glass area', 'in2', () => window && inSquareInches(window.glassArea), () => ({ because: [model.values.glass_size] })),
        ]),
    ];
}
