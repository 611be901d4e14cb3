import { inWords, type Finding } from '../../core/finding.js';
import { showCitation } from '../../core/citation.js';
import { showList } from '../../core/show.js';
import { iecCitations } from '../../rule-sets/iec-figures.js';
import { defineRule } from '../rule.js';
import { electrician } from './electrical-findings.js';
import { lightModelPlace, scope, zonedFitting } from './zone-findings.js';

export const zoneRatingNotStated = defineRule({
    id: 'zone-rating-not-stated',
    family: 'electrical',
    title: 'What electrical equipment in the room withstands is not stated',
    severity: 'info',
    why: 'Heat and water ruin equipment that was not built for them. What its maker states decides; a rating nobody wrote down is never taken as enough.',
    bad: 'rules iec\nlight_model Glim { body 6" x 8"; depth 3"; protection IPX4 }\nlight lamp on left { model Glim; from front 8"; height 62" }',
    good: 'rules iec\nlight_model Glim { body 6" x 8"; depth 3"; rating 125 degC; cable_rating 180 degC; protection IPX4 }\nlight lamp on left { model Glim; from front 8"; height 62" }',
    sources: [iecCitations.zoneThreeEquipment, iecCitations.zoneThreeCable, iecCitations.ingress],
    isWaivable: true,
    fixes: 'none',
    *check(input): Generator<Finding> {
        for (const { name, kind, zones, ratingC, waterDigit } of input.results.zones?.equipment ?? []) {
            const found = kind === 'heater' || zones.length === 0 ? undefined : zonedFitting(input, name);
            if (!found) continue;
            const { light, fitting } = found;
            const model = light?.values.model?.value.block;
            if (!fitting.block.isWhole || model?.isWhole === false || (light?.values.model && !model)) continue;
            const missing = [
                ...(zones.includes(3) && ratingC === undefined && kind !== 'cable' ? [{ what: 'temperature', key: 'rating', citation: iecCitations.zoneThreeEquipment }] : []),
                ...(zones.includes(3) && (kind === 'cable' || kind === 'light') && fitting.cableRatingC === undefined ? [{ what: 'cable temperature', key: 'cable_rating', citation: iecCitations.zoneThreeCable }] : []),
                ...(kind !== 'cable' && waterDigit === undefined && model?.values.protection === undefined ? [{ what: 'protection against water', key: 'protection', citation: iecCitations.ingress }] : []),
            ];
            const [first] = missing;
            if (!first) continue;
            yield {
                at: lightModelPlace(found),
                message: `For ${found.name} no ${showList(missing.map(({ what }) => what), 'or')} is stated; in the room it has to be known (${missing.map(({ citation }) => showCitation(citation)).filter((text, i, all) => all.indexOf(text) === i).join('; ')}). ${light ? `Add ${showList(missing.map(({ key }) => key))} to ${model ? 'its entry' : 'the entry of its model'}, as its maker states.` : 'Have its data sheet at hand for the electrician.'} ${electrician}`,
                citation: first.citation, measured: inWords('not stated'), required: inWords(missing.map(({ key }) => key).join(', ')), subject: name, related: scope(input),
            };
        }
    },
});
