import { spoken } from '../core/show.js';
import type { LengthUnit } from '../core/show.js';
import { showValue } from '../core/value.js';
import type { Block } from '../model/block.js';
import { definitionOf, type BlockKind } from '../vocabulary/index.js';
import type { Property } from '../vocabulary/block.js';
import type { Spot } from './spot.js';
import { findRuleSet } from '../rule-sets/index.js';

/** `door model` for `door_model`. */

/** What a property takes and what holds without it, in one line. */
export function describeProperty(property: Property): string {
    const takes = `Takes ${property.type.words}.`;
    const rest = property.isRequired ? 'Required.' : property.otherwise !== undefined ? `Otherwise: ${property.otherwise}.` : 'Optional.';
    return `${takes} ${rest}`;
}

/** How the header of a block is written: `bench name on wall, …`. */
export function describeHeader(kind: BlockKind): string {
    const { name, hasTitle, walls } = definitionOf(kind);
    const parts = [kind as string];
    if (name !== 'none') parts.push(name === 'required' ? 'name' : '[name]');
    if (hasTitle) parts.push('["title"]');
    if (walls === 'one') parts.push('on wall');
    if (walls === 'several') parts.push('on wall, …');
    if (walls === 'optional') parts.push('[on wall]');
    return `${parts.join(' ')} { … }`;
}

/** What one word of a list of choices stands for, where there is more to say than the word. */
export function describeChoice(word: string): string {
    const set = findRuleSet(word);
    return set ? set.title : '';
}

export type KnownSpot = Exclude<Spot, { kind: 'nowhere' }>;

/** A parameter in one line: what it takes, its bounds, its default, its doc. */
export function describeParameter(name: string, { takes, least, most, one_of: choices, otherwise, doc }: Block<'parameter'>['values'], unit: LengthUnit): string {
    const bounds = [
        least && `at least ${showValue(least.value, unit)}`, most && `at most ${showValue(most.value, unit)}`,
        choices && `one of ${choices.value.map(one => showValue(one, unit)).join(', ')}`, otherwise ? `otherwise ${showValue(otherwise.value, unit)}` : 'has to be given',
    ].filter(Boolean).join('; ');
    return `${doc ? `${doc.value}. ` : ''}${name} takes a ${spoken(takes?.value ?? 'value')}: ${bounds}.`;
}
