import { dimensions, sameDimension, type DimensionName } from '../core/quantity.js';
import type { Value } from '../core/value.js';
import type { DeclaredFact } from '../facts/declared.js';
import type { ValueKind } from '../vocabulary/values.js';

/** What kind a value is of, as far as choosing between values goes. */
export type SortOfValue = DimensionName | 'flag' | 'word' | 'text' | 'date' | 'other' | `list of ${DimensionName | 'flag' | 'word' | 'other'}`;

/** What may stand at some place: one sort, any figure, a list or its members, or anything. */
export type Wanted = SortOfValue | 'figure' | 'list' | 'any';

const dimensionNames = Object.keys(dimensions) as readonly DimensionName[];

export function sortOf(value: Value): SortOfValue {
    switch (value.kind) {
        case 'quantity': return dimensionNames.find(name => sameDimension(dimensions[name], value.quantity.dimension)) ?? 'other';
        case 'list': {
            const [first] = value.items;
            const sort = first === undefined ? 'other' : sortOf(first);
            return listOf(sort);
        }
        default: return value.kind;
    }
}
export const listOf = (sort: SortOfValue): SortOfValue => sort === 'flag' || sort === 'word' || sort in dimensions ? `list of ${sort as DimensionName}` : 'list of other';

const ofKinds: Readonly<Partial<Record<ValueKind, SortOfValue>>> = {
    length: 'length', lengths: 'list of length', place: 'length', 'centre-place': 'length', number: 'number', count: 'number', percent: 'number', power: 'power', voltage: 'voltage',
    current: 'current', mass: 'mass', temperature: 'temperature', area: 'area', volume: 'volume', time: 'time', pressure: 'pressure', density: 'number', price: 'other', text: 'text', date: 'date',
    choice: 'word', flag: 'flag', holds: 'flag', choices: 'list of word', walls: 'list of word', reference: 'word', references: 'list of word', layer: 'word',
};
/** What the whole value of a property is; nothing when only its parts can be named, such as the width of a size. */
export const sortOfKind = (kind: ValueKind): SortOfValue | undefined => ofKinds[kind];

export const sortOfDeclared = ({ is }: DeclaredFact): SortOfValue => is === 'words' ? 'word' : is;

/** What the figures of a property are. */
export function wantedBy(kind: ValueKind): Wanted | undefined {
    switch (kind) {
        case 'length': case 'lengths': case 'size': case 'length-range': case 'place': case 'centre-place': case 'wall-lengths': case 'layer': return 'length';
        case 'number': case 'count': case 'percent': return 'number';
        case 'power': case 'voltage': case 'current': case 'mass': case 'temperature': case 'area': case 'volume': case 'time': case 'pressure': return kind;
        case 'volume-range': return 'volume';
        case 'supply': case 'supplies': return 'voltage';
        case 'value': case 'values': case 'condition': case 'holds': return 'any';
        default: return undefined;
    }
}

export const isFigure = (sort: SortOfValue | undefined): boolean => sort === undefined || sort === 'other' || sort in dimensions;

/** Whether a value can stand where another is wanted; one whose sort nobody knows can. */
export function fits(sort: SortOfValue | undefined, wanted: Wanted): boolean {
    if (sort === undefined || wanted === 'any') return true;
    if (wanted === 'list') return sort.startsWith('list of');
    if (wanted === 'figure') return isFigure(sort);
    return sort === wanted;
}
