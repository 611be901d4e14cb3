import { inWords } from '../../core/finding.js';
import { showList } from '../../core/show.js';
import { showPhases } from '../../engines/electrical/steps.js';
import { defineRule } from '../rule.js';
import { circuitFindings, electrician, isSupplyOnSite, modelPlace, showSupply, supplyPlace } from './electrical-findings.js';

export const supplyWrongPhase = defineRule({
    id: 'supply-wrong-phase',
    family: 'electrical',
    title: 'The heater needs a supply of other phases',
    severity: 'error',
    why: 'A heater wired for three phases cannot be run on a single-phase supply unless its manual gives a second way to connect it.',
    bad: 'heater stove on right { model Fell150; from front 8"; guard yes }',
    good: 'heater stove on right { model Fell150; from front 8"; guard yes }\nsite { width 96"; depth 108"; ceiling 7\'6"; floor tile; supply 208 V three_phase; capacity 60 A }',
    sources: [{ kind: 'manual', text: 'the supplies the heater\'s manual names' }],
    isWaivable: true,
    fixes: 'none',
    check: input => circuitFindings(input, 'wrong-phase', ({ problem, circuit, source }) => isSupplyOnSite(circuit, input) ? {
        at: supplyPlace(circuit, input),
        message: `The supply of heater ${circuit.heater.name} is ${showSupply(circuit.supply)}; the heater is built for ${showList(circuit.manual.ratings.map(showSupply), 'or')} (${source}). Choose a ${showPhases(problem.supplied)} heater, or have a ${showPhases(problem.needed)} supply brought in. ${electrician}`,
        measured: inWords(showPhases(problem.supplied)), required: inWords(showPhases(problem.needed)), subject: `${circuit.heater.name}.current`,
        related: [{ at: modelPlace(circuit), message: 'The heater is chosen here.' }],
    } : undefined),
});
