import { blockKinds, propertiesOf } from '../vocabulary/index.js';

/** What the vocabulary lets stand behind a word; where its block is not known, in whichever it may stand. */
export interface PropertyKinds { readonly kinds: ReadonlySet<string>; readonly takesList: boolean; readonly takesRange: boolean; readonly takesLength: boolean; readonly takesPlace: boolean }

const lists: ReadonlySet<string> = new Set(['lengths', 'wall-lengths', 'supplies']);
const ranges: ReadonlySet<string> = new Set(['length-range', 'volume-range']);
const places: ReadonlySet<string> = new Set(['place', 'centre-place', 'wall-lengths']);
const lengths: ReadonlySet<string> = new Set(['length', 'lengths', 'size', 'length-range', 'layer', ...places]);
const nothing: PropertyKinds = { kinds: new Set(), takesList: false, takesRange: false, takesLength: false, takesPlace: false };

let known: ReadonlyMap<string, PropertyKinds> | undefined;

/**
 * @param word the word a fact begins with
 * @param block kind of the block it stands in, as far as it is known
 */
export function propertyKinds(word: string, block?: string): PropertyKinds {
    const property = block === undefined ? undefined : propertiesOf(block).get(word)?.property;
    return property ? kindsOf(property.type.kind) : (known ??= all()).get(word) ?? nothing;
}
const kindsOf = (kind: string): PropertyKinds => ({ kinds: new Set([kind]), takesList: lists.has(kind), takesRange: ranges.has(kind), takesLength: lengths.has(kind), takesPlace: places.has(kind) });

function all(): ReadonlyMap<string, PropertyKinds> {
    const found = new Map<string, PropertyKinds>();
    for (const block of blockKinds) for (const [word, { property: { type: { kind } } }] of propertiesOf(block)) {
        const before = found.get(word) ?? nothing;
        const here = kindsOf(kind);
        found.set(word, {
            kinds: new Set([...before.kinds, ...here.kinds]),
            takesList: before.takesList || here.takesList, takesRange: before.takesRange || here.takesRange,
            takesLength: before.takesLength || here.takesLength, takesPlace: before.takesPlace || here.takesPlace,
        });
    }
    return found;
}
