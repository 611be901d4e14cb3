import { inWords } from '../../core/finding.js';
import { showList } from '../../core/show.js';
import { insideSwingHits } from '../../engines/site/door-opens.js';
import { defineRule } from '../rule.js';
import { showThing } from './opening-findings.js';

const citation = { kind: 'geometry', text: 'the leaf sweeps a quarter of a circle' } as const;

export const leafHitsInside = defineRule({
    id: 'leaf-hits-inside',
    family: 'opening',
    title: 'A leaf that opens inward hits something',
    severity: 'error',
    why: 'The door does not open all the way, and what it hits may be the heater or its guard.',
    bad: 'door entry on front { model Leaf24; from left 23 7/8"; hinge left; swing inward }\nbench lower on left { build Slatted; top 18"; depth 24" }',
    good: 'door entry on front { model Leaf24; from left 23 7/8"; hinge left; swing outward }',
    sources: [citation],
    isWaivable: true,
    fixes: 'none',
    *check({ results: { doors, things, inside, benches, heaters } }) {
        if (!inside) return;
        for (const { door, name, block } of doors) {
            if (!door) continue;
            const hit = insideSwingHits(door, things, inside);
            if (hit.length === 0) continue;
            const names = [...new Set(hit.map(showThing))];
            const blocks = [...new Set(hit.flatMap(thing => benches?.blocks.get(thing.name) ?? heaters.find(heater => heater.name === thing.name)?.block ?? []))];
            yield {
                at: block.values.swing?.span ?? block.head,
                message: `The leaf of door ${name} opens inward and hits ${showList(names)}; its whole sweep has to be free. Let it open outward, hinge it on the other side, or move ${names.length === 1 ? 'that' : 'these'} away.`,
                citation, measured: inWords(names.join(', ')), required: inWords('nothing in the sweep'), subject: name,
                related: blocks.map(other => ({ at: other.head, message: 'The leaf hits this.' })),
            };
        }
    },
});
