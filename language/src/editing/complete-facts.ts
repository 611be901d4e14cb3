import { endOf } from '../syntax/token-list.js';
import { blocksIn, definitionOf, isBlockKind, propertiesOf } from '../vocabulary/index.js';
import { describeHeader, describeProperty } from './describe.js';
import type { Offer, Sight } from './offer.js';
import { oneOf } from './offer.js';
import type { RawText } from './raw-facts.js';
import { padKey, sampleBlock, sampleValue } from './samples.js';
import type { Spot } from './spot.js';

type KeySpot = Extract<Spot, { kind: 'key' }>;

/** Facts and blocks that can begin here: the facts the block still needs, then those it may have, then blocks. */
export function completeKeys(raw: RawText, spot: KeySpot, offset: number, sight: Sight): Offer[] {
    const { scope, fact, current } = spot;
    const start = current?.startOffset ?? offset;
    const end = current ? endOf(current) : offset;
    const others = scope.facts.filter(other => other !== fact);
    const written = new Set(others.flatMap(other => other.key && !other.body ? propertiesOf(scope.kind).get(other.key.image)?.key ?? [] : []));
    const blocks = new Set(others.flatMap(other => other.key && isBlockKind(other.key.image) ? [other.key.image] : []));
    const isAlone = !fact || (fact.tokens.length === 1 && !fact.body);
    const isOwnLine = !/[^\s]/.test(raw.text.slice(raw.text.lastIndexOf('\n', start - 1) + 1, start));
    const at = { start, end };
    const offers: Offer[] = [];
    if (scope.kind === 'file') {
        const paths = sight.paths();
        offers.push({
            ...at, label: 'use', kind: 'fact', order: 0, isSnippet: isAlone, text: isAlone ? `use "${paths.length > 0 ? oneOf(1, paths) : '$1'}"` : 'use',
            detail: 'a path in quotes', doc: 'Makes the entries of another file known in this one.',
        });
    }
    if (isBlockKind(scope.kind) && !(fact?.body)) {
        for (const [key, property] of Object.entries(definitionOf(scope.kind).properties)) {
            if (written.has(key)) continue;
            offers.push({
                ...at, label: key, kind: 'fact', order: property.isRequired ? 0 : 1, isSnippet: isAlone,
                text: isAlone ? `${isOwnLine ? padKey(key) : `${key} `}${sampleValue(property, raw, scope, sight)}` : key,
                detail: property.type.words, doc: `${property.doc}\n\n${describeProperty(property)}`,
            });
        }
    }
    for (const kind of blocksIn(scope.kind)) {
        const definition = definitionOf(kind);
        if (blocks.has(kind) && !definition.isRepeatable) continue;
        offers.push({
            ...at, label: kind, kind: 'block', order: 2, isSnippet: isAlone, text: isAlone ? sampleBlock(kind, raw, scope, sight) : kind,
            detail: describeHeader(kind), doc: definition.doc,
        });
    }
    return offers;
}
