import { lengthFigure } from '../../core/finding.js';
import { minus, plus } from '../../core/length.js';
import { defineRule } from '../rule.js';
import { areAllPlaced, benchFindings } from './bench-findings.js';

const citation = { kind: 'practice', text: 'a climb of 20 in at most from the floor or from one tier to the next' } as const;

export const climbTooHigh = defineRule({
    id: 'climb-too-high',
    family: 'bench',
    title: 'The climb to a bench is too high',
    severity: 'warning',
    why: 'Bathers climb barefoot, wet and warm, beside a hot heater, and come down again dizzy.',
    bad: '// without bench lower',
    good: 'bench lower on back { build Slatted; top 17"; depth 16"; in_front_of upper }',
    sources: [citation],
    isWaivable: true,
    fixes: 'none',
    check: input => benchFindings(input, 'climb-too-high', ({ problem: { from, rise, limit }, block, name }) => {
        const { show, results: { benches } } = input;
        const top = block.values.top;
        // A step that could not be placed has a message of its own.
        if (!top || !areAllPlaced(input)) return undefined;
        const base = minus(top.value, rise);
        const [least, most] = [minus(top.value, limit), plus(base, limit)];
        const below = from === undefined ? undefined : benches?.blocks.get(from);
        const step = from !== undefined ? `, or that of bench ${from} to ${show(least)} or higher`
            : least <= most ? `, or put a step before it, its top between ${show(least)} and ${show(most)} over the floor` : '';
        return {
            at: top.span,
            message: `The climb to bench ${name} is ${show(rise)} from ${from === undefined ? 'the floor' : `bench ${from}`}; ${show(limit)} at most is needed (common practice, no source). Set the top to ${show(most)} or lower${step}.`,
            citation, measured: lengthFigure(rise), required: lengthFigure(limit), subject: `${name}.rise`,
            related: below ? [{ at: below.values.top?.span ?? below.head, message: 'The climb starts here.' }] : [],
        };
    }),
});
