import { amount, inWords } from '../../core/finding.js';
import { showList } from '../../core/show.js';
import { defineRule } from '../rule.js';
import { circuitFindings, electrician, isSupplyOnSite, modelPlace, showKilowatts, showSupply, supplyPlace } from './electrical-findings.js';

export const supplyWrongVoltage = defineRule({
    id: 'supply-wrong-voltage',
    family: 'electrical',
    title: 'The supply has another voltage than the heater',
    severity: 'error',
    why: 'Power goes with the square of the voltage: below its own a heater never reaches bathing temperature, above it the elements and the wiring run hotter than the heater was tested for.',
    bad: 'heater stove on right { model Tarn45; from front 8"; guard yes }\nsite { width 96"; depth 108"; ceiling 7\'6"; floor tile; supply 208 V single_phase; capacity 60 A }',
    good: 'heater stove on right { model Tarn60; from front 8"; guard yes }\nsite { width 96"; depth 108"; ceiling 7\'6"; floor tile; supply 208 V single_phase; capacity 60 A }',
    sources: [{ kind: 'manual', text: 'the supplies the heater\'s manual names' }],
    isWaivable: true,
    fixes: 'none',
    check: input => circuitFindings(input, 'wrong-voltage', ({ problem, circuit, source }) => {
        if (!isSupplyOnSite(circuit, input)) return undefined;
        const built = showList(circuit.manual.ratings.map(showSupply), 'or');
        return {
            at: supplyPlace(circuit, input),
            message: `The supply of heater ${circuit.heater.name} is ${showSupply(circuit.supply)}; the heater is built for ${built} (${source}). On that supply it would give ${showKilowatts(problem.wattsAtSupply)} instead of ${showKilowatts(problem.ratedWatts)}. Choose a heater of the supply's voltage, or another supply. ${electrician}`,
            measured: amount(problem.suppliedVolts, 'V'), required: inWords(built), subject: `${circuit.heater.name}.current`,
            related: [{ at: modelPlace(circuit), message: 'The heater is chosen here.' }],
        };
    }),
});
