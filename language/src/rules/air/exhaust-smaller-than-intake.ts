import { amount, type Finding, type Fix } from '../../core/finding.js';
import { showCitation } from '../../core/citation.js';
import { inSquareInches } from '../../core/length.js';
import type { AssembledVent } from '../../assembly/air.js';
import { practice } from '../../rule-sets/documents.js';
import type { Span } from '../../core/span.js';
import type { Size } from '../../vocabulary/values.js';
import { isVentAstray } from '../astray.js';
import { writtenLength } from '../fixes.js';
import { defineRule, type RuleInput } from '../rule.js';
import { governs, isOpen, roleOf, showArea, showOpening, ventTitle } from './air-findings.js';

export const exhaustSmallerThanIntake = defineRule({
    id: 'exhaust-smaller-than-intake',
    family: 'air',
    title: 'The exhaust lets less air out than the intake lets in',
    severity: 'warning',
    why: 'Hot air takes up more room than the cold air it was made of; an exhaust that is too small chokes the intake.',
    bad: 'vent exhaust on front { size 8" x 4"; free 60; from left 8"; below_ceiling 3"; air room }',
    good: 'vent exhaust on front { size 8" x 4"; from left 8"; below_ceiling 3"; air room }',
    sources: [practice('The exhaust is at least as large as the intake.')],
    isWaivable: true,
    fixes: 'review',
    *check(input): Generator<Finding> {
        const { air } = input.results;
        const rule = governs(input, 'vent.exhaust-not-less');
        // Everything about the openings has to be known, and none of them shut, before their sums say anything.
        if (!air || !rule?.figure.value || air.paths.isExhaustNoSmaller !== false || input.job.vents.some(vent => !vent.isWhole || !isOpen(vent)) || air.vents.some(isVentAstray)) return;
        const of = (role: 'intake' | 'exhaust'): readonly AssembledVent[] => air.vents.filter(({ block }) => roleOf(block) === role);
        const [outs, ins] = [of('exhaust'), of('intake')];
        const [first] = outs;
        const size = first?.block.values.size;
        if (!first || !size) return;
        const { gross, free } = air.paths;
        const free100 = ({ block }: AssembledVent): number => block.values.free?.value ?? 100;
        const [other] = ins;
        const span = other?.block.values.size;
        const fixes = outs.length === 1 && ins.length === 1 && other && span && free100(first) >= free100(other) ? asLargeAs(size.span, span.value, `Make ${first.name} as large as ${other.name}`, input) : [];
        yield {
            at: (first.block.values.free && fixes.length === 0 ? first.block.values.free : size).span,
            message: `${outs.length === 1 ? `${ventTitle(first.block)} is` : 'All exhausts together are'} ${showOpening({ gross: gross.exhaust, free: free.exhaust }, input)}; ${showArea(free.intake, input)} free or more is needed, as much as the intake (${showCitation(rule.clause.citation)}). Enlarge the exhaust${first.block.values.free ? ', or choose a more open grille' : ''}.`,
            citation: rule.clause.citation, measured: amount(inSquareInches(free.exhaust), 'in2'), required: amount(inSquareInches(free.intake), 'in2'), subject: 'air.exhaust',
            related: ins.map(({ block, name }) => ({ at: block.values.size?.span ?? block.head, message: `The size of ${name} stands here.` })), fixes,
        };
    },
});

function asLargeAs(span: Span, { width, height }: Size, title: string, { job }: RuleInput): readonly Fix[] {
    const newText = `${writtenLength(width, job.unit)} x ${writtenLength(height, job.unit)}`;
    return [{ title, safety: 'review', edits: [{ span, newText }] }];
}
