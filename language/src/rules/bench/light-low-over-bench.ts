import { showCitation } from '../../core/citation.js';
import { lengthFigure } from '../../core/finding.js';
import { extent, intervalsOverlap } from '../../core/geometry.js';
import { minus, plus } from '../../core/length.js';
import { isKind } from '../../model/block.js';
import { governing, showRequired } from '../governing.js';
import { defineRule } from '../rule.js';
import { placedBenches } from './bench-findings.js';

export const lightLowOverBench = defineRule({
    id: 'light-low-over-bench',
    family: 'bench',
    title: 'A light hangs low over a bench',
    severity: 'warning',
    why: 'Heads and backs meet it where people sit, climb and lie down; its glass and its housing get hot.',
    bad: 'light lamp on back { model Ember; from left 30"; height 62" }',
    good: 'light lamp on left { model Ember; from front 8"; height 62" }',
    sources: [{ kind: 'practice', text: '42 to 47 in from the upper bench to the ceiling' }],
    isWaivable: true,
    fixes: 'none',
    *check(input) {
        const { ruleSets, results: { fittings, inside }, show, job } = input;
        const rule = governing(ruleSets, 'bench.head-clearance');
        if (!rule) return;
        for (const { name, block, thing } of fittings) {
            if (!isKind(block, 'light') || !thing) continue;
            const below = placedBenches(input)
                .filter(({ layout }) => layout.runs.some(({ box }) => intervalsOverlap(box.x, thing.box.x) && intervalsOverlap(box.y, thing.box.y)) && thing.box.z.to > layout.top)
                .reduce<ReturnType<typeof placedBenches>[number] | undefined>((highest, bench) => highest && highest.layout.top >= bench.layout.top ? highest : bench, undefined);
            if (!below) continue;
            const clearance = minus(thing.box.z.from, below.layout.top);
            if (clearance >= rule.figure.value) continue;
            const high = plus(below.layout.top, rule.figure.value);
            const fits = inside !== undefined && plus(high, extent(thing.box.z)) <= inside.height;
            yield {
                at: block.values.height?.span ?? block.head,
                message: `Light ${name} hangs ${show(clearance)} over bench ${below.name}; ${showRequired(rule.figure.value, job.unit)} is needed to sit under it (${showCitation(rule.clause.citation)}). ` +
                    `Move it clear of the bench${fits ? `, or to a height of ${show(high)}` : ''}.`,
                citation: rule.clause.citation, measured: lengthFigure(clearance), required: lengthFigure(rule.figure.value), subject: name,
                related: [{ at: below.block.head, message: 'The bench stands here.' }],
            };
        }
    },
});
