import { amount, type Finding } from '../../core/finding.js';
import { showCitation } from '../../core/citation.js';
import { inSquareInches } from '../../core/length.js';
import { imc } from '../../rule-sets/documents.js';
import { defineRule } from '../rule.js';
import { exhausts, governs, showArea, ventTitle } from './air-findings.js';

export const grilleLeavesTooLittle = defineRule({
    id: 'grille-leaves-too-little',
    family: 'air',
    title: 'A grille leaves less open than the area of the required opening',
    severity: 'info',
    why: 'The published figure is of the opening, not of what a grille leaves free; a reviewer may read it either way, and the air knows only the free part.',
    bad: 'rules us_commercial\nvent exhaust on front { size 8" x 4"; free 50; from left 8"; below_ceiling 3"; air room }',
    good: 'rules us_commercial\nvent exhaust on front { size 8" x 8"; free 50; from left 8"; below_ceiling 3"; air room }',
    sources: [imc('914.5', 'Gross area of a 4 in by 8 in opening.')],
    isWaivable: true,
    fixes: 'none',
    *check(input): Generator<Finding> {
        const required = governs(input, 'vent.opening-area');
        if (!required) return;
        const wanted = required.figure.value;
        const open = exhausts(input).flatMap(({ block, name, vent }) => vent ? [{ block, name, vent }] : []);
        // An opening that is too small without its grille has a finding of its own.
        const enough = open.filter(({ vent }) => vent.gross >= wanted);
        const [best] = [...enough].sort((a, b) => a.vent.free > b.vent.free ? -1 : a.vent.free < b.vent.free ? 1 : 0);
        if (!best || best.vent.free >= wanted) return;
        yield {
            at: best.block.values.free?.span ?? best.block.head,
            message: `${ventTitle(best.block)} is ${showArea(best.vent.gross, input)} gross and ${showArea(best.vent.free, input)} free; the figure of ${showArea(wanted, input)} is of the gross opening (${showCitation(required.clause.citation)}), and not every reviewer reads it so. Ask the local authority, or choose a more open grille.`,
            citation: required.clause.citation, measured: amount(inSquareInches(best.vent.free), 'in2'), required: amount(inSquareInches(wanted), 'in2'), subject: `${best.name}.free_area`,
        };
    },
});
