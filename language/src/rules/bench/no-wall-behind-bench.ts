import { lengthFigure } from '../../core/finding.js';
import { zero } from '../../core/length.js';
import { addFact, replaceValue } from '../fixes.js';
import { defineRule } from '../rule.js';
import { benchFindings } from './bench-findings.js';

const citation = { kind: 'geometry', text: 'a ledger or back rest is screwed to the wall behind it' } as const;

export const noWallBehindBench = defineRule({
    id: 'no-wall-behind-bench',
    family: 'bench',
    title: 'A back ledger or back rest without a wall behind it',
    severity: 'error',
    why: 'The bench stands off the wall, in front of another tier, so there is nothing to screw to.',
    bad: 'bench lower on back { build Slatted; top 18"; depth 16"; in_front_of upper; load_path back_ledger_and_legs }',
    good: 'bench lower on back { build Slatted; top 18"; depth 16"; in_front_of upper; load_path end_ledgers }',
    sources: [citation],
    isWaivable: true,
    fixes: 'review',
    check: input => benchFindings(input, 'no-wall-behind', ({ problem: { what, wall, off }, block, name }) => {
        const { load_path: loadPath, back_rest: backRest, build } = block.values;
        const stated = what === 'back ledger' ? loadPath : backRest;
        const fixes = what === 'back rest' ? [] : loadPath
            ? [replaceValue('Carry it on end ledgers', loadPath.span, 'end_ledgers')]
            : build ? [addFact('Carry it on end ledgers', build.fact, 'load_path end_ledgers')] : [];
        return {
            at: stated?.span ?? build?.span ?? block.head,
            message: `Bench ${name} stands ${input.show(off)} off the ${wall} wall; a ${what} has to be screwed to the wall behind it. ` +
                (what === 'back ledger' ? 'Carry it on end ledgers.' : 'Leave its back rest out; the tier behind is its back.'),
            citation, measured: lengthFigure(off), required: lengthFigure(zero), subject: `${name}.load_path`,
            related: stated ? [{ at: block.head, message: 'The bench stands here.' }] : [],
            fixes,
        };
    }),
});
