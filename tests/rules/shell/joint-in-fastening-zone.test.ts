import { expect, test } from 'vitest';
import { jointInFasteningZone as rule } from '../../../language/src/rules/shell/joint-in-fastening-zone.js';
import { checkFindings, checkFix, findingsOf } from '../../support/check.js';
import { withStandardJob } from '../../support/standard-job.js';
import { analyzeText } from '../../support/workspace.js';

test('reports the place of the heater', () => checkFindings(rule, `
    heater stove on right {
        model     Tarn60
        centre    from front 24"
        //        ^^^^^^^^^^^^^^ 💡 warning: The joint between RIGHT-2 and RIGHT-3 lies 24" from the front wall, inside the fastening zone of heater stove, 17" to 31"; the zone has to lie inside one panel (common practice, no source). Place it centre from front 12" to 17", where no joint lies behind it and it clears everything.
        guard     yes
    }
`));

test('accepts a zone that ends at the joint: 17" and 7" make 24"', () => checkFindings(rule, `
    heater stove on right { model Tarn60; centre from front 17"; guard yes }
`));

test('stays silent while the place is being typed', () => checkFindings(rule, `
    heater stove on right {
        model Tarn60
        centre from front
    }
`));

test('a fix moves the heater to the nearest place', () => checkFix(rule, `
    heater stove on right { model Tarn60; centre from front 24"; guard yes }
`, `
    heater stove on right { model Tarn60; centre from front 17"; guard yes }
`));

const onFront = (near: string): string => withStandardJob(`heater stove on front { model Tarn60; from right ${near}; guard yes; backing 1 1/2" }`);

// The standard job with the heater on the front wall: the places named are those at which the rules find nothing, every 1/8" of the wall tried.
test('names the places, and only those, that are clear and off the joints', async () => {
    const [finding] = await findingsOf(rule, onFront('5"'));
    expect(finding?.message).toContain('Place it from right 7 1/4" to 9 7/8", where no joint lies behind it and it clears everything.');
    const clean: number[] = [];
    for (let eighths = 0; eighths <= 8 * 30; eighths++) {
        const found = (await analyzeText(onFront(`${Math.floor(eighths / 8)} ${eighths % 8}/8"`))).findings.map(one => one.rule);
        if (!found.some(id => ['joint-in-fastening-zone', 'clearance-beside-too-small', 'thing-in-heater', 'heater-runs-off-wall', 'things-in-one-place'].includes(id))) clean.push(eighths / 8);
    }
    expect([clean[0], clean.at(-1), clean.length]).toEqual([7.25, 9.875, 22]);
});

test.each([
    '// without door entry',
    'door entry on front { model Leaf42; from left 23 7/8"; hinge left }',
    'door entry on front { model Leaf24; from left 23 7/8; hinge left }',
    'door entry on front { model Leaf24; from left 23 7/8"; hinge lft }',
])('keeps silent while the place of the door is not known: %s', async door => {
    expect(await findingsOf(rule, onFront('5"'))).toHaveLength(1);
    expect(await findingsOf(rule, withStandardJob(`${door}\nheater stove on front { model Tarn60; from right 5"; guard yes; backing 1 1/2" }`))).toEqual([]);
});
