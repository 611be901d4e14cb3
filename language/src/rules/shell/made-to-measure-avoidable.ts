import { inWords, lengthFigure } from '../../core/finding.js';
import { showList } from '../../core/show.js';
import { isRoomOverfull } from '../astray.js';
import { defineRule } from '../rule.js';
import { areOpeningsKnown, changedSizes, fixesOf, movedOpenings, openingBlock, placeSpan, setSize, shellResult, showMoves, sizeOf } from './shell-findings.js';
import { walls } from '../../core/geometry.js';

const citation = { kind: 'practice', text: 'a panel made to measure costs more than a module' } as const;

export const madeToMeasureAvoidable = defineRule({
    id: 'made-to-measure-avoidable',
    family: 'shell',
    title: 'Another size or place would save a panel made to measure',
    severity: 'hint',
    why: 'A panel made to measure is ripped, costs more and cannot be replaced from stock. Often an inch on the room or on the place of an opening saves it.',
    bad: 'door entry on front { model Leaf24; from left 22"; hinge left }',
    good: 'door entry on front { model Leaf24; from left 23 7/8"; hinge left }',
    sources: [citation],
    isWaivable: true,
    fixes: 'review',
    *check(input) {
        const result = shellResult(input);
        if (!result || !areOpeningsKnown(input)) return;
        for (const wall of walls) {
            const { panels, suggestions } = result.walls[wall];
            const moves = movedOpenings(input, suggestions.placesThatSave, false);
            const [move] = moves;
            const block = move && openingBlock(input, move.opening.name);
            const made = panels.filter(panel => panel.kind === 'made_to_measure');
            if (made.length === 0 || !block) continue;
            yield {
                at: placeSpan(block),
                message: `The ${wall} wall needs ${made.length === 1 ? 'a panel' : `${made.length} panels`} made to measure (${made.map(panel => `${panel.mark} ${input.show(panel.cover)}`).join(', ')}); one fewer is needed with ${showMoves(moves)} (common practice, no source).`,
                citation, measured: inWords(`${made.length} made to measure`), required: inWords(showMoves(moves)), subject: `room.${wall}.panels`, fixes: fixesOf(moves),
            };
        }
        if (isRoomOverfull(input)) return;
        for (const { axis, sizesThatSave } of result.sizes) {
            const size = sizeOf(input, axis);
            // A larger room has to fit the place as well.
            const fit = input.results.site?.fit?.axes.find(one => one.axis === axis);
            // A room that does not fit its place gets another size anyway.
            if (fit && !fit.fits) continue;
            const spare = fit?.spare;
            const sizes = size ? changedSizes(size.value, sizesThatSave.filter(({ change }) => change <= 0 || spare === undefined || change <= spare)) : [];
            if (!size || sizes.length === 0) continue;
            yield {
                at: size.span,
                message: `An outside ${axis} of ${showList(sizes.map(input.show), 'or')} would save a panel made to measure (common practice, no source).`,
                citation, measured: lengthFigure(size.value), required: inWords(sizes.map(input.show).join(' or ')), subject: `room.inside.${axis}`, fixes: sizes.map(length => setSize(axis, size.span, length, input)),
            };
        }
    },
});
