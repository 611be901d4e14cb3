import { inWords } from '../../core/finding.js';
import { overlappingThings, type ThingKind } from '../../engines/fittings/things.js';
import { defineRule } from '../rule.js';
import { blockOfThing, capital, thingWords } from './thing-findings.js';

export const thingsInOnePlace = defineRule({
    id: 'things-in-one-place',
    family: 'heater',
    title: 'A fitting stands where something else is',
    severity: 'error',
    why: 'Two things cannot stand in one place; one of them would be cut on site or left out.',
    bad: 'fitting peg on left { what hook; size 4" x 2"; depth 3"; from front 10"; bottom 65" }',
    good: 'fitting peg on left { what hook; size 4" x 2"; depth 3"; from front 14"; bottom 65" }',
    sources: [{ kind: 'geometry', text: 'two things cannot stand in one place' }],
    isWaivable: true,
    fixes: 'none',
    check: function* (input) {
        const { things, fittings } = input.results;
        const told = new Set<string>();
        for (const [one, other] of overlappingThings(things)) {
            // Heaters, guards and leaves have rules of their own, and so have benches, doors, windows and vents among themselves.
            if (ownRules.has(one.kind) || ownRules.has(other.kind)) continue;
            const fitting = fittings.find(({ thing }) => thing === other) ?? fittings.find(({ thing }) => thing === one);
            const partner = fitting?.thing === other ? one : other;
            if (!fitting?.thing || told.has(`${fitting.name} ${partner.name}`)) continue;
            told.add(`${fitting.name} ${partner.name}`);
            const related = blockOfThing(input, partner);
            yield {
                at: fitting.block.head,
                message: `${capital(thingWords(fitting.thing))} stands where ${thingWords(partner)} is. Move one of them.`,
                citation: { kind: 'geometry', text: 'two things cannot stand in one place' }, measured: inWords(`in ${thingWords(partner)}`), required: inWords('clear of each other'), subject: fitting.name,
                related: related ? [{ at: related.head, message: `${capital(thingWords(partner))} stands here.` }] : [],
            };
        }
    },
});

const ownRules: ReadonlySet<ThingKind> = new Set(['heater', 'guard', 'door']);
