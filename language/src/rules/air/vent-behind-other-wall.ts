import { inWords, type Fix } from '../../core/finding.js';
import { defineRule } from '../rule.js';
import { ventFindings } from './air-findings.js';

const citation = { kind: 'geometry', text: 'what opens behind a heater is in the wall it hangs on' } as const;

export const ventBehindOtherWall = defineRule({
    id: 'vent-behind-other-wall',
    family: 'air',
    title: 'A vent is said to open behind a heater of another wall',
    severity: 'error',
    why: 'The place of the vent is taken from the heater; on another wall it has none.',
    bad: 'vent intake on left { size 8" x 4"; behind stove; bottom 4"; air outdoors }',
    good: 'vent intake on right { size 8" x 4"; behind stove; bottom 4"; air outdoors }',
    sources: [citation],
    isWaivable: true,
    fixes: 'review',
    check: input => ventFindings(input, 'vent-on-other-wall-than-its-heater', ({ problem, block, title, name }) => {
        const { behind } = block.values;
        const [wall] = block.walls;
        if (!behind || !wall) return undefined;
        const heater = input.job.heaters.find(candidate => candidate.name?.value === behind.value.name);
        const fix: Fix = { title: `Put it on the ${problem.heaterWall} wall`, safety: 'review', edits: [{ span: wall.span, newText: problem.heaterWall }] };
        return {
            at: behind.span,
            message: `${title} is on the ${problem.wall} wall and heater ${behind.value.name} on the ${problem.heaterWall} wall; behind a heater is its own wall. Put the vent on the ${problem.heaterWall} wall, or give its place with from.`,
            citation, measured: inWords(problem.wall), required: inWords(problem.heaterWall), subject: name, fixes: [fix],
            ...(heater && { related: [{ at: heater.head, message: 'The heater is here.' }] }),
        };
    }),
});
