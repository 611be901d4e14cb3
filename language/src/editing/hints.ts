import type { Analysis } from '../analyze.js';
import type { LengthUnit } from '../core/show.js';
import { blocksOf, factsPrefix, headlines } from './find-block.js';
import { showFigureBoth, showFigureShort } from './show-both.js';

/** A computed value shown between the text, behind the head of the block it belongs to. */
export interface Hint { readonly at: number; readonly label: string; readonly tooltip: string }

/** The one or two values that matter most of each room, bench and heater, where they are known. */
export function hintsOf(analysis: Analysis, unit?: LengthUnit): readonly Hint[] {
    const hints: Hint[] = [];
    for (const { block, job, parent } of blocksOf(analysis)) {
        const prefix = factsPrefix(block, parent);
        const wanted = (headlines[block.kind] ?? []).slice(0, 2);
        if (!job || prefix === undefined || wanted.length === 0) continue;
        const facts = wanted.flatMap(suffix => { const found = job.facts.get(`${prefix}.${suffix}`); return found.kind === 'value' ? [found.fact] : []; });
        if (facts.length === 0) continue;
        const shownIn = unit ?? job.job.unit;
        hints.push({
            at: block.walls.at(-1)?.span.end ?? block.head.end,
            label: facts.map(fact => `${fact.title} ${showFigureShort(fact.value, shownIn)}`).join(', '),
            tooltip: facts.map(fact => `${fact.title}: ${showFigureBoth(fact.value, shownIn)}${fact.how ? `, ${fact.how}` : ''}`).join('\n\n'),
        });
    }
    return hints;
}
