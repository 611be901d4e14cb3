import type { Analysis, JobAnalysis } from '../analyze.js';
import type { LengthUnit } from '../core/show.js';
import { spanContains } from '../core/span.js';
import type { Block } from '../model/block.js';
import type * as ast from '../syntax/generated/ast.js';
import { blocksOf, factsPrefix, headlines } from './find-block.js';
import { callHints } from './hints-in-calls.js';
import { valueHints } from './hints-of-values.js';
import { showFigureBoth, showFigureShort } from './show-both.js';

/** Kinds of hint, each of which can be turned off by itself. */
export const hintKinds = ['volume', 'cutLength', 'amps', 'spareRoom', 'computedValues', 'parameterNames'] as const;
export type HintKind = typeof hintKinds[number];

/** Something known that stands between the text: behind the head of a block, behind a value, before a value that is given by place. */
export interface Hint { readonly kind: HintKind; readonly at: number; readonly label: string; readonly tooltip: string; readonly side: 'behind' | 'before' }

const kindOf: Readonly<Record<string, HintKind>> = { room: 'volume', bench: 'cutLength', heater: 'amps', site: 'spareRoom' };

/**
 * Hints of a file.
 * @param root its tree; without it only what is computed of whole blocks is shown
 * @param unit to show lengths in; without it the one of each job
 */
export function hintsOf(analysis: Analysis, unit?: LengthUnit, root?: ast.File): readonly Hint[] {
    return [...blockHints(analysis, unit), ...(root ? [...valueHints(analysis, root, unit), ...callHints(root)] : [])].sort((a, b) => a.at - b.at);
}

/** The one or two values that matter most of each room, bench and heater, where they are known. */
function blockHints(analysis: Analysis, unit: LengthUnit | undefined): readonly Hint[] {
    const hints = new Map<string, Hint>();
    for (const { block, job, parent } of blocksOf(analysis)) {
        const kind = kindOf[block.kind];
        const prefix = factsPrefix(block, parent);
        if (!job || prefix === undefined || !kind) continue;
        const facts = (headlines[block.kind] ?? []).slice(0, 2).flatMap(suffix => { const found = job.facts.get(`${prefix}.${suffix}`); return found.kind === 'value' ? [found.fact] : []; });
        const place = placeOf(block, kind, job, analysis.file.uri);
        if (facts.length === 0 || !place) continue;
        const shownIn = unit ?? job.job.unit;
        const hint: Hint = {
            kind, at: place.at, side: 'behind',
            label: place.before + facts.map(fact => `${fact.title} ${showFigureShort(fact.value, shownIn)}`).join(', '),
            tooltip: facts.map(fact => `${fact.title}: ${showFigureBoth(fact.value, shownIn)}${fact.how ? `, ${fact.how}` : ''}`).join('\n\n'),
        };
        hints.set(`${kind} ${place.at} ${place.before}`, hint);
    }
    return [...hints.values()];
}

/** Behind the head of a block in the job's own text; what only the series says stands behind the name of the series, volume and current alone. */
function placeOf(block: Block, kind: HintKind, { job }: JobAnalysis, uri: string): { readonly at: number; readonly before: string } | undefined {
    const own = job.block.span;
    if (own.uri !== uri) return undefined;
    if (spanContains(own, block.span)) {
        const wall = block.walls.findLast(({ span }) => spanContains(block.span, span));
        return { at: wall?.span.end ?? block.head.end, before: '' };
    }
    const { base } = job.block;
    return base && job.variant === undefined && base.span.uri === uri && (kind === 'volume' || kind === 'amps') ? { at: base.span.end, before: kind === 'amps' ? `${block.name?.value ?? block.kind}: ` : '' } : undefined;
}
