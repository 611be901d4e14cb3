import { completeKeys } from './complete-facts.js';
import { completeHeader, completeValue } from './complete-values.js';
import type { Offer, Sight } from './offer.js';
import type { RawText } from './raw-facts.js';
import { spotAt } from './spot.js';

/**
 * What can be written at `offset` (UTF-16 in the raw text), in the order it should be offered.
 * Works on tokens and vocabulary only, so half-typed text is as good as whole; nothing is offered that could not stand there.
 */
export function completionsAt(raw: RawText, offset: number, sight: Sight): readonly Offer[] {
    const spot = spotAt(raw, offset);
    switch (spot.kind) {
        case 'nowhere': return [];
        case 'key': return completeKeys(raw, spot, offset, sight).sort((a, b) => a.order - b.order);
        case 'header': return completeHeader(raw, spot, offset);
        case 'value': return completeValue(raw, spot, offset, sight);
        case 'path': {
            const used = new Set(raw.file.facts.filter(fact => fact !== spot.fact).flatMap(fact => fact.key?.image === 'use' ? [fact.tokens[1]?.image] : []));
            return sight.paths().filter(path => !used.has(`"${path}"`)).map(path => ({
                label: path, kind: 'file', text: `"${path}"`, isSnippet: false, order: 0, detail: 'a file of the workspace', doc: '', start: spot.start, end: spot.end,
            }));
        }
        default: return spot satisfies never;
    }
}
