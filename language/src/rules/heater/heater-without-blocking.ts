import { inWords, lengthFigure } from '../../core/finding.js';
import { showCitation } from '../../core/citation.js';
import { showRequired } from '../governing.js';
import { defineRule } from '../rule.js';
import { heaterFindings, lacks } from './heater-findings.js';

export const heaterWithoutBlocking = defineRule({
    id: 'heater-without-blocking',
    family: 'heater',
    title: 'No blocking is planned behind the fastenings of the heater',
    severity: 'error',
    why: 'A heater with its stones hangs on two screws; in lining and insulation alone they pull out.',
    bad: 'heater stove on right { model Tarn60; from front 8"; guard yes }',
    good: 'heater stove on right { model Tarn60; from front 8"; guard yes; backing 1 1/2" }',
    sources: [{ kind: 'catalogue', text: 'the least penetration of the screw' }],
    isWaivable: true,
    fixes: 'none',
    check: input => heaterFindings(input, ({ name, block, screw, fastening }) => {
        const isZero = block.values.backing !== undefined;
        if (!screw?.problems.some(({ kind }) => kind === 'no-backing') || !(isZero || lacks(block, 'backing'))) return undefined;
        const [left, right] = fastening?.points ?? [];
        const where = left && right ? ` ${input.show(left.v)} over the floor` : '';
        return {
            at: block.values.backing?.span ?? block.head,
            message: `Heater ${name} hangs on screws${where} with no blocking behind the lining; solid wood at least ${showRequired(screw.required.value, input.job.unit)} thick is needed (${showCitation(screw.required.citation)}). Write backing and the thickness of the wood.`,
            citation: screw.required.citation, measured: inWords('no blocking'), required: lengthFigure(screw.required.value), subject: `${name}.fastening_height`,
        };
    }),
});
