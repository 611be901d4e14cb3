import { inWords, type Finding } from '../../core/finding.js';
import { showList } from '../../core/show.js';
import { showA } from '../../engines/electrical/steps.js';
import { isSupplyWrong } from '../astray.js';
import { defineRule } from '../rule.js';

export const capacityNotStated = defineRule({
    id: 'capacity-not-stated',
    family: 'electrical',
    title: 'What the supply can spare is not stated',
    severity: 'info',
    why: 'The largest single load of many houses is the heater; whether the panel has room for it decides the job before any wood is cut.',
    bad: 'site { width 96"; depth 108"; ceiling 7\'6"; floor tile; supply 240 V single_phase }',
    good: 'site { width 96"; depth 108"; ceiling 7\'6"; floor tile; supply 240 V single_phase; capacity 60 A }',
    sources: [{ kind: 'practice', text: 'an electrician reckons the load of the panel before a heater is ordered' }],
    isWaivable: true,
    fixes: 'none',
    *check({ job, results }): Generator<Finding> {
        const { site } = job;
        const supply = site?.values.supply;
        const loads = results.circuits.filter(circuit => !isSupplyWrong(circuit)).flatMap(({ heater, result: { designCurrentA } }) => designCurrentA === undefined ? [] : [`${showA(designCurrentA)} for heater ${heater.name}`]);
        if (!job.isWhole || !site?.isWhole || !supply || site.written.has('capacity') || loads.length === 0) return;
        yield {
            at: supply.span,
            message: `The site does not state what its supply can spare; ${showList(loads)} is needed. Have a licensed electrician reckon the load of the panel, and add the figure as capacity.`,
            citation: { kind: 'practice', text: 'an electrician reckons the load of the panel before a heater is ordered' }, measured: inWords('not stated'), required: inWords(showList(loads)), subject: 'site',
        };
    },
});
