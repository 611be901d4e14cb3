import { inWords, lengthFigure } from '../../core/finding.js';
import { insideRun, neighbours } from '../../core/geometry.js';
import { minus, type Length } from '../../core/length.js';
import { defineRule } from '../rule.js';
import { placesOffJoints } from './heater-places.js';
import { areOpeningsKnown, shellProblems } from './shell-findings.js';

const citation = { kind: 'practice', text: 'no panel joint strictly inside the fastening zone of the heater' } as const;

export const jointInFasteningZone = defineRule({
    id: 'joint-in-fastening-zone',
    family: 'shell',
    title: 'A panel joint falls behind the fastenings of the heater',
    severity: 'warning',
    why: 'The blocking the heater hangs on lies inside one panel. With a joint between its screws the blocking is cut in two and the panels can work against each other under a hot load.',
    bad: 'heater stove on right { model Tarn60; centre from front 24"; guard yes; backing 1 1/2" }',
    good: 'heater stove on right { model Tarn60; from front 8"; guard yes; backing 1 1/2" }',
    sources: [citation],
    isWaivable: true,
    fixes: 'review',
    *check(input) {
        if (!areOpeningsKnown(input)) return;
        for (const { name, wall, joint, between, zone } of shellProblems(input, 'joint-in-fastening-zone')) {
            const { inside, heaters } = input.results;
            const judged = heaters.find(heater => heater.name === name);
            const place = judged?.block.values.from ?? judged?.block.values.centre;
            if (!judged || !inside) continue;
            // Measured from the wall the designer measures from, else from the left one.
            const from = place?.value.wall ?? neighbours[wall].left;
            const isFromRight = from === neighbours[wall].right;
            const along = (u: Length): Length => isFromRight ? minus(insideRun(wall, inside), u) : u;
            const [near, far] = isFromRight ? [along(zone.to), along(zone.from)] : [zone.from, zone.to];
            const { words, fixes } = placesOffJoints(input, judged);
            yield {
                at: place?.span ?? judged.block.head,
                message: `The joint between ${between[0]} and ${between[1]} lies ${input.show(along(joint))} from the ${from} wall, inside the fastening zone of heater ${name}, ${input.show(near)} to ${input.show(far)}; ` +
                    `the zone has to lie inside one panel (common practice, no source). ${words}`.trimEnd(),
                citation, measured: lengthFigure(along(joint)), required: inWords(`outside ${input.show(near)} to ${input.show(far)}`), subject: name, fixes,
            };
        }
    },
});
