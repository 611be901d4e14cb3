import { inWords, lengthFigure, type Finding } from '../../core/finding.js';
import { extent, intervalsOverlap } from '../../core/geometry.js';
import { minus } from '../../core/length.js';
import { showCitation } from '../../core/citation.js';
import { practice } from '../../rule-sets/documents.js';
import { isVentAstray } from '../astray.js';
import { defineRule } from '../rule.js';
import { heightSpan, ventTitle } from './air-findings.js';

const citation = practice('Blocking reaches 2 in beyond the upper screws of the heater on every side.');

export const ventInHeaterBlocking = defineRule({
    id: 'vent-in-heater-blocking',
    family: 'air',
    title: 'A vent is cut through the blocking the heater hangs on',
    severity: 'error',
    why: 'The heater hangs with its stones on two screws; where the vent is cut they would meet air.',
    bad: 'vent intake on right { size 8" x 4"; behind stove; bottom 24"; air outdoors }',
    good: 'vent intake on right { size 8" x 4"; behind stove; bottom 4"; air outdoors }',
    sources: [citation],
    isWaivable: true,
    fixes: 'none',
    *check(input): Generator<Finding> {
        for (const { name: heaterName, block: hung, heater, blocking, fastening } of input.results.heaters) {
            if (!heater || !blocking) continue;
            for (const { block, name, vent, problems } of input.results.air?.vents ?? []) {
                if (!vent || isVentAstray({ problems }) || vent.wall !== heater.wall || !intervalsOverlap(blocking.u, vent.onWall.u) || !intervalsOverlap(blocking.v, vent.onWall.v)) continue;
                const lowest = minus(blocking.v.from, extent(vent.onWall.v));
                const screws = fastening?.points?.[0].v;
                yield {
                    at: heightSpan(block),
                    message: `${ventTitle(block)} is ${input.show(vent.onWall.v.from)} to ${input.show(vent.onWall.v.to)} over the floor, in the blocking of heater ${heaterName}${screws === undefined ? '' : `, whose upper screws are at ${input.show(screws)}`}; ${input.show(blocking.v.from)} to ${input.show(blocking.v.to)} is kept whole (${showCitation(citation)}). ${lowest >= 0 ? `A lower edge up to ${input.show(lowest)}, or from ${input.show(blocking.v.to)} up, is clear of it.` : `A lower edge from ${input.show(blocking.v.to)} up is clear of it.`}`,
                    citation, measured: lengthFigure(vent.onWall.v.from), required: inWords(`outside ${input.show(blocking.v.from)} to ${input.show(blocking.v.to)}`), subject: name, related: [{ at: hung.head, message: 'The heater hangs here.' }],
                };
            }
        }
    },
});
