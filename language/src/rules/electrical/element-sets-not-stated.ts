import { amount, type Finding } from '../../core/finding.js';
import { showCitation } from '../../core/citation.js';
import { isAtMost } from '../../engines/electrical/index.js';
import { showA } from '../../engines/electrical/steps.js';
import { elementSetLimitA, necCitations } from '../../rule-sets/nec.js';
import { isSupplyWrong } from '../astray.js';
import { defineRule } from '../rule.js';
import { electrician, modelPlace } from './electrical-findings.js';

export const elementSetsNotStated = defineRule({
    id: 'element-sets-not-stated',
    family: 'electrical',
    title: 'How a large heater is divided is not stated',
    severity: 'warning',
    why: 'Above 48 A the elements come in sets with a device each; how many there are is the maker\'s to say and decides how many circuits are pulled.',
    bad: 'heater_model Broad15 { manual "Broad 15 manual, demo"; power 15 kW; supply 240 V single_phase; body 24" x 27"; depth 16" }\nheater stove on right { model Broad15; from front 8"; guard yes }',
    good: 'heater_model Broad15 { manual "Broad 15 manual, demo"; power 15 kW; supply 240 V single_phase; body 24" x 27"; depth 16"; circuits 2 }\nheater stove on right { model Broad15; from front 8"; guard yes }',
    sources: [necCitations.elementSet],
    isWaivable: true,
    fixes: 'none',
    *check({ results }): Generator<Finding> {
        for (const circuit of results.circuits.filter(one => !isSupplyWrong(one))) {
            const { family, heater, manual, block, result: { currentA } } = circuit;
            const isOpen = heater.model.isWhole && !heater.model.written.has('circuits') && !block?.written.has('circuits') && block?.isWhole !== false;
            if (family !== 'us' || currentA === undefined || isAtMost(currentA, elementSetLimitA) || !isOpen) continue;
            yield {
                at: modelPlace(circuit),
                message: `Heater ${heater.name} draws ${showA(currentA)}, and its manual (${manual.manual}) is not said to divide it; ${showA(elementSetLimitA)} is the most one set of elements may draw (${showCitation(necCitations.elementSet)}). Read in the manual into how many circuits it is divided and add circuits to its entry. ${electrician}`,
                citation: necCitations.elementSet, measured: amount(currentA, 'A'), required: amount(elementSetLimitA, 'A'), subject: `${heater.name}.current`,
            };
        }
    },
});
