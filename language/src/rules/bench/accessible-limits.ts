import { showCitation } from '../../core/citation.js';
import { lengthFigure, type Finding } from '../../core/finding.js';
import { replaceLength } from '../fixes.js';
import { showRequired } from '../governing.js';
import type { RuleInput } from '../rule.js';
import { accessibleBenches, accessibleClause } from './accessible-findings.js';

interface Limits {
    readonly fact: 'top' | 'depth';
    readonly least: 'bench.depth-minimum' | 'bench.seat-height-minimum';
    readonly most: 'bench.depth-maximum' | 'bench.seat-height-maximum';
    /** The measured half of the message. */
    readonly says: (name: string, figure: string) => string;
}

/** Accessible benches one of whose figures lies outside its two limits; the limit it passes is the one cited and set. */
export function* outsideLimits(input: RuleInput, { fact, least, most, says }: Limits): Generator<Finding> {
    const { show, job: { unit } } = input;
    const [low, high] = [accessibleClause(input, least), accessibleClause(input, most)];
    for (const { block, name } of accessibleBenches(input)) {
        const stated = block.values[fact];
        if (!stated) continue;
        const passed = low && stated.value < low.figure.value ? low : high && stated.value > high.figure.value ? high : undefined;
        if (!passed) continue;
        const limit = passed.figure.value;
        yield {
            at: stated.span,
            message: `${says(name, show(stated.value))}; ${showRequired(limit, unit, passed === low ? 'least' : 'most')} ${passed === low ? 'at least' : 'at most'} is needed (${showCitation(passed.clause.citation)}). ` +
                (low && high ? `Set the ${fact} between ${showRequired(low.figure.value, unit)} and ${showRequired(high.figure.value, unit, 'most')}.` : `Set the ${fact} to it.`),
            citation: passed.clause.citation, measured: lengthFigure(stated.value), required: lengthFigure(limit), subject: name,
            related: block.values.is_accessible ? [{ at: block.values.is_accessible.fact, message: 'This makes it the accessible bench.' }] : [],
            fixes: replaceLength(fact, stated.span, limit, unit),
        };
    }
}
