import { completeKeys } from './complete-facts.js';
import { completeExpression } from './complete-expression.js';
import { completeFigures } from './complete-figures.js';
import { completeHeader } from './complete-header.js';
import { completeValue } from './complete-values.js';
import { completeWaive } from './complete-waive.js';
import { endOf } from '../syntax/token-list.js';
import { expressionPlace } from './expression-place.js';
import type { Offer, Sight } from './offer.js';
import { isWordToken, type RawText } from './raw-facts.js';
import { spotAt, type Spot } from './spot.js';

/**
 * What can be written at `offset` (UTF-16 in the raw text), in the order it should be offered.
 * Works on tokens and vocabulary, so half-typed text is as good as whole, and on what was worked out for the job where that is known; nothing is
 * offered that could not stand there.
 */
export function completionsAt(raw: RawText, offset: number, sight: Sight): readonly Offer[] {
    const spot = spotAt(raw, offset);
    const figures = spot.kind === 'nowhere' || spot.kind === 'value' ? completeFigures(raw, offset, sight) : [];
    return [...figures, ...offersAt(raw, spot, offset, sight)];
}

function offersAt(raw: RawText, spot: Spot, offset: number, sight: Sight): readonly Offer[] {
    switch (spot.kind) {
        case 'nowhere': return [];
        case 'key': return completeKeys(raw, spot, offset, sight).sort((a, b) => a.order - b.order);
        case 'header': return completeHeader(raw, spot, offset, sight);
        case 'value': return completeValue(raw, spot, offset, sight);
        case 'let': return completeLet(raw, spot, offset, sight);
        case 'waive': return completeWaive(raw, spot, offset, sight);
        case 'path': {
            const used = new Set(raw.file.facts.filter(fact => fact !== spot.fact).flatMap(fact => fact.key?.image === 'use' ? [fact.tokens[1]?.image] : []));
            return sight.paths().filter(path => !used.has(`"${path}"`)).map(path => ({
                label: path, kind: 'file', text: `"${path}"`, isSnippet: false, order: 0, detail: 'a file of the workspace', doc: '', start: spot.start, end: spot.end,
            }));
        }
        default: return spot satisfies never;
    }
}

/** The sign behind the name of a `let`, then its expression. The name is for the designer to find. */
function completeLet(raw: RawText, { fact, name, hasSign, before, after, current }: Extract<Spot, { kind: 'let' }>, offset: number, sight: Sight): readonly Offer[] {
    const at = { start: current?.startOffset ?? offset, end: current ? endOf(current) : offset };
    if (hasSign) return completeExpression({ raw, fact, offset, at, sight, base: 'any', place: expressionPlace(before, raw.types), behind: after });
    const isBehindName = before.length === 1 && name !== undefined && isWordToken(name, raw.types) && after.length === 0 && !current;
    return isBehindName ? [{ ...at, label: '=', kind: 'operator', text: '= ${1:1}', isSnippet: true, order: 0, detail: 'and its value', doc: 'A value or a calculation stands behind the sign.' }] : [];
}
