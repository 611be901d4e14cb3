import { amount, type Finding } from '../../core/finding.js';
import { showCitation } from '../../core/citation.js';
import { showList } from '../../core/show.js';
import { isAtMost } from '../../engines/electrical/index.js';
import { showA } from '../../engines/electrical/steps.js';
import { necCitations } from '../../rule-sets/nec.js';
import { isSupplyWrong } from '../astray.js';
import { defineRule } from '../rule.js';
import { electrician } from './electrical-findings.js';

export const heatersTogetherExceedCapacity = defineRule({
    id: 'heaters-together-exceed-capacity',
    family: 'electrical',
    title: 'The supply cannot spare what all heaters need together',
    severity: 'error',
    why: 'Each heater alone may fit the supply while both at once do not, and they run at the same hours.',
    bad: 'heater second on left { model Tarn60; from front 8"; guard yes }',
    good: 'heater second on left { model Tarn45; from front 8"; guard yes }',
    sources: [necCitations.continuous],
    isWaivable: true,
    fixes: 'none',
    *check({ job, results: { circuits } }): Generator<Finding> {
        const capacity = job.site?.values.capacity;
        const loads = circuits.flatMap(({ result: { designCurrentA } }) => designCurrentA ?? []);
        // On a three-phase supply the heaters may hang on different lines, so their currents do not simply add up.
        const isOneLine = circuits.every(({ supply }) => supply.phases === 'single');
        const total = loads.reduce((sum, load) => sum + load, 0);
        if (!capacity || loads.length < 2 || circuits.some(isSupplyWrong) || !isOneLine || loads.some(load => !isAtMost(load, capacity.value)) || isAtMost(total, capacity.value)) return;
        const citation = circuits.some(({ family }) => family === 'us') ? necCitations.continuous : { kind: 'geometry', text: 'currents on one supply add up' } as const;
        yield {
            at: capacity.span,
            message: `The supply can spare ${showA(capacity.value)}; heaters ${showList(circuits.map(({ heater }) => heater.name))} together need ${showA(total)} (${showCitation(citation)}). Choose smaller heaters, or have the supply enlarged. ${electrician}`,
            citation, measured: amount(capacity.value, 'A'), required: amount(total, 'A'),
            related: circuits.map(({ heater, result }) => ({ at: heater.block.head, message: `Needs ${showA(result.designCurrentA ?? 0)}.` })),
        };
    },
});
