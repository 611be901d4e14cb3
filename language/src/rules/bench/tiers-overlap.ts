import { extent } from '../../core/geometry.js';
import { inWords } from '../../core/finding.js';
import { zero } from '../../core/length.js';
import { replaceLength } from '../fixes.js';
import { defineRule } from '../rule.js';
import { benchFindings } from './bench-findings.js';

export const tiersOverlap = defineRule({
    id: 'tiers-overlap',
    family: 'bench',
    title: 'Two benches want the same space',
    severity: 'error',
    why: 'Slats, bearers and rails of one would have to pass through those of the other.',
    bad: 'bench lower on back { build Slatted; top 34"; depth 16"; in_front_of upper; overlap 4" }',
    good: 'bench lower on back { build Slatted; top 18"; depth 16"; in_front_of upper; overlap 2" }',
    sources: [{ kind: 'geometry', text: 'two benches cannot fill one space' }],
    isWaivable: true,
    fixes: 'review',
    check: input => benchFindings(input, 'tiers-overlap', ({ problem: { other, shared }, block, name }) => {
        const { show, job: { unit }, results } = input;
        const { overlap, top } = block.values;
        const upper = results.benches?.blocks.get(other);
        const layout = results.benches?.result.benches.find(bench => bench.name === other);
        const size = [shared.x, shared.y, shared.z].map(side => show(extent(side))).join(' x ');
        const whom = other === name ? `The runs of bench ${name}` : `Benches ${name} and ${other}`;
        const isUnder = overlap !== undefined && overlap.value > 0;
        const low = layout && top && layout.railUnderside > 0 && top.value > layout.railUnderside ? layout.railUnderside : undefined;
        const cures = [...isUnder ? ['take the overlap away'] : [], ...low === undefined ? [] : [`set the top of ${name} to ${show(low)} or lower, where the rails of ${other} begin`]];
        const cure = other === name || cures.length === 0 ? 'Move, shorten or lower one of them.' : `${capital(cures.join(', or '))}.`;
        return {
            at: isUnder ? overlap.span : block.head,
            message: `${whom} both fill a space of ${size} (along the front x to the back x up). ${cure}`,
            citation: { kind: 'geometry', text: 'two benches cannot fill one space' },
            measured: inWords(size), required: inWords('nothing shared'), subject: name,
            related: upper && other !== name ? [{ at: upper.head, message: `Bench ${other} stands here.` }] : [],
            fixes: isUnder ? replaceLength('overlap', overlap.span, zero, unit) : [],
        };
    }),
});

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
