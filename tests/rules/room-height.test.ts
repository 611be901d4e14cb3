import { expect, test } from 'vitest';
import { withStandardJob } from '../support/standard-job.js';
import { analyzeText } from '../support/workspace.js';

/*
 * Whatever wants a higher room names one height, which serves all. The bench at 37" wants 42" for heads (common practice, no source): 79" inside, and the
 * shell takes 3 3/4" of the height of the standard job.
 */
const low = (height: string, rest = ''): string => withStandardJob(`room { system Skerry; width 84"; depth 79 1/2"; height ${height}; ceiling spans_left_to_right }\n${rest}`);
const lowDoor = `door_model Trial { leaf 24" x 66"; clear 22 3/4" x 65"; section 30"; catch roller; frame_width 1 1/2" }
door entry on front { model Trial; from left 23 7/8"; hinge left }`;

test.each([
    ['door and bench', low('81"'), ['door-higher-than-room', 'head-clearance-too-low']],
    ['heater and bench', low('78"', lowDoor), ['room-too-low-for-heater', 'head-clearance-too-low']],
    ['heater, door and bench', low('72"'), ['room-too-low']],
])('%s: one height', async (_what, text, rules) => {
    const findings = (await analyzeText(text)).findings.filter(({ rule }) => rules.includes(rule));
    expect(findings.map(({ rule }) => rule).sort()).toEqual([...rules].sort());
    for (const { message } of findings) expect(message).toContain('82 3/4"');
});
test('the height one finding writes leaves none of the others', async () => {
    const text = low('78"', lowDoor);
    const fix = (await analyzeText(text)).findings.find(({ rule }) => rule === 'room-too-low-for-heater')?.fixes?.[0];
    expect(fix?.title).toBe('Set the height to 82 3/4"');
    const found = (await analyzeText(text.replace('height 78"', 'height 82 3/4"'))).findings.map(({ rule }) => rule);
    for (const rule of ['room-too-low-for-heater', 'head-clearance-too-low', 'door-higher-than-room', 'room-too-low']) expect(found).not.toContain(rule);
});
