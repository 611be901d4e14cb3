import { test } from 'vitest';
import { noTurningSpace as rule } from '../../../language/src/rules/bench/no-turning-space.js';
import { checkFindings } from '../../support/check.js';

// 60" circle or T: ADA Standards 2010, 304.3 by 612.3, from memory.
test('reports the largest circle and what is in the way', () => checkFindings(rule, `
    rules us_accessible
    room {
    //@ 1-5 error: The largest circle free on the floor is 58" across; a turning space of 60" across is needed, or a T with arms 36" wide in a square of 60" (ADA Standards 2010, 304.3 by 612.3). Without bench seat there would be one: shorten or move it; a bench that is readily removed may stand in it (ADA Standards 2010, 612.2, exception).
        system    Skerry
        width     84"
        depth     85 1/2"
        height    7'0"
        ceiling   spans_left_to_right
    }
    bench seat on back { build Slatted; top 18"; depth 20"; is_accessible yes }
    // without bench upper
    // without bench lower
`));

test('a bench that leaves exactly 60" is accepted, and 1/16" less is not', async () => {
    const job = (depth: string): string => `
        rules us_accessible
        room { system Skerry; width 84"; depth 85 1/2"; height 7'0"; ceiling spans_left_to_right }
        bench seat on back { build Slatted; top 18"; depth ${depth}; is_accessible yes }
        // without bench upper
        // without bench lower
        // without heater stove
    `;
    await checkFindings(rule, job('18"'));
    await checkFindings(rule, job('18 1/16"').replace("left_to_right }", "left_to_right }\n        //@ 1-5 error: The largest circle free on the floor is 59 15/16\" across; …"));
});

test('a room that is not to be accessible is not asked', () => checkFindings(rule, `
    rules us_dwelling
`));

test('stays silent while a bench is being typed', () => checkFindings(rule, `
    rules us_accessible
    bench lower on back {
        build     Slatted
        top
        depth     16"
    }
`));
