import { inWords } from '../../core/finding.js';
import { fixedOnOpenings, type WallOpening } from '../../engines/fittings/things.js';
import { isVentAstray } from '../astray.js';
import { defineRule } from '../rule.js';
import { fittingWords } from './fitting-findings.js';
import { blockOfThing } from './thing-findings.js';

export const fittingOnOpening = defineRule({
    id: 'fitting-on-opening',
    family: 'heater',
    title: 'A fitting is fixed where there is no wall',
    severity: 'error',
    why: 'In an opening there is no lining and no blocking to fix anything to.',
    bad: 'thermometer on front { from left 30"; below_ceiling 10" }',
    good: 'thermometer on front { from left 20"; below_ceiling 10" }',
    sources: [{ kind: 'geometry', text: 'a fitting is fixed to the lining' }],
    isWaivable: true,
    fixes: 'none',
    check: function* (input) {
        const { doors, windows, air, fittings, inside } = input.results;
        if (!inside) return;
        const openings: readonly WallOpening[] = [
            ...doors.flatMap(({ name, door }) => door ? [{ name, wall: door.wall, opening: door.frameOpening }] : []),
            ...windows.flatMap(({ name, window }) => window ? [{ name, wall: window.wall, opening: window.glass }] : []),
            ...(air?.vents ?? []).flatMap(({ name, vent, problems }) => vent && !isVentAstray({ problems }) ? [{ name, wall: vent.wall, opening: { u: vent.onWall.u, v: vent.onWall.v } }] : []),
        ];
        for (const { thing, opening } of fixedOnOpenings(fittings.flatMap(fitting => fitting.thing ?? []), openings, inside)) {
            const fitting = fittings.find(other => other.thing === thing);
            if (!fitting) continue;
            const kind = doors.some(({ name }) => name === opening.name) ? 'door' : windows.some(({ name }) => name === opening.name) ? 'window' : 'vent';
            const block = blockOfThing(input, { kind, name: opening.name, box: thing.box });
            yield {
                at: fitting.block.head,
                message: `${fittingWords(fitting)} is fixed where ${kind} ${opening.name} opens the ${opening.wall} wall. Move it beside or over the opening.`,
                citation: { kind: 'geometry', text: 'a fitting is fixed to the lining' }, measured: inWords(`on ${kind} ${opening.name}`), required: inWords('on the lining'), subject: fitting.name,
                related: block ? [{ at: block.head, message: 'The opening is here.' }] : [],
            };
        }
    },
});
