import { inWords } from '../../core/finding.js';
import { showList } from '../../core/show.js';
import { isRoomOverfull } from '../astray.js';
import { defineRule } from '../rule.js';
import { heaterFindings, placeSpan } from './heater-findings.js';
import { blockOfThing, shortClearances, thingWords } from './thing-findings.js';

export const heaterWayOutBlocked = defineRule({
    id: 'heater-way-out-blocked',
    family: 'heater',
    title: 'No level way out of the room was found for the heater',
    severity: 'info',
    why: 'When a heater has to be changed and no straight way leads out, benches come down first or it has to be turned; better known before than after.',
    bad: `heater_model Broad { manual "Broad sheet (fictional)"; power 6 kW; supply 240 V single_phase; body 24" x 22"; depth 11"; off_wall 2"; off_floor 8" }
heater stove on back { model Broad; from left 8"; guard yes; backing 1 1/2" }`,
    good: 'heater stove on right { model Tarn60; from front 8"; guard yes; backing 1 1/2" }',
    sources: [{ kind: 'geometry', text: 'the casing carried upright and level at right angles to the walls' }],
    isWaivable: true,
    fixes: 'none',
    check: input => heaterFindings(input, judged => {
        const { removal, name, block } = judged;
        // A heater inside a bench or a wall, or one no position gets through the door, has a finding that says more.
        if (isRoomOverfull(input)) return undefined;
        if (!removal?.noPath || !removal.passesDoor || judged.problems.length > 0 || shortClearances(input, judged).some(({ collides }) => collides)) return undefined;
        const names = [...new Set(removal.inTheWay.map(thingWords))];
        const way = removal.noPath === 'opening_too_small_upright' ? 'it does not pass the door upright and unturned'
            : names.length > 0 ? `${showList(names)} ${names.length === 1 ? 'stands' : 'stand'} in the way` : 'things stand in the way';
        return {
            at: placeSpan(block),
            message: `Heater ${name} has no level way out of the room: ${way}. Note in the build guide how it is turned, or what comes down first.`,
            citation: { kind: 'geometry', text: 'the casing carried upright and level at right angles to the walls' }, measured: inWords(way), required: inWords('a straight way out'), subject: name,
            related: [...new Set(removal.inTheWay.flatMap(thing => blockOfThing(input, thing) ?? []))].map(other => ({ at: other.head, message: 'It stands in the way.' })),
        };
    }),
});
