import { showCitation } from '../../core/citation.js';
import { amount } from '../../core/finding.js';
import { isMetric, showNumber } from '../../core/show.js';
import { defineRule } from '../rule.js';
import { inCatalogue, modelSpan } from './opening-findings.js';

const kgPerPound = 0.45359237;

export const hingesTooFew = defineRule({
    id: 'hinges-too-few',
    family: 'opening',
    title: 'Too few hinges for the leaf',
    severity: 'warning',
    why: 'A heavy leaf on too few hinges sags, scrapes and sticks; a door that sticks is no way out.',
    bad: 'door_model Trial { leaf 24" x 76"; clear 22 3/4" x 75"; section 30"; catch roller; leaf_mass 90 lb; hinges 2; hinge_limit 60 lb }\ndoor entry on front { model Trial; from left 23 7/8"; hinge left }',
    good: 'door_model Trial { leaf 24" x 76"; clear 22 3/4" x 75"; section 30"; catch roller; leaf_mass 90 lb; hinges 3; hinge_limit 60 lb }\ndoor entry on front { model Trial; from left 23 7/8"; hinge left }',
    sources: [{ kind: 'catalogue', text: 'the mass one pair of hinges carries' }, { kind: 'practice', text: 'two hinges up to 25 kg, three up to 40 kg, four up to 60 kg' }],
    isWaivable: true,
    fixes: 'none',
    *check({ results: { doors }, job: { unit } }) {
        for (const assembled of doors) {
            const { name, model, hinges: { stated, needed, isEnough, citation } } = assembled;
            const mass = model.values.leaf_mass;
            if (isEnough !== false || stated === undefined || needed === undefined || !mass) continue;
            const weighs = isMetric(unit) ? `${showNumber(mass.value, 1)} kg` : `${showNumber(mass.value / kgPerPound, 1)} lb`;
            yield {
                at: modelSpan(assembled),
                message: `Door ${name} has ${stated} hinges for a leaf of ${weighs}; ${needed} are needed (${showCitation(citation)}). Add hinges to the door model, or choose a lighter leaf.`,
                citation, measured: amount(stated, 'hinges'), required: amount(needed, 'hinges'), subject: `${name}.hinges_needed`,
                related: inCatalogue(model, model.values.hinges, 'The number of hinges stands here.'),
            };
        }
    },
});
