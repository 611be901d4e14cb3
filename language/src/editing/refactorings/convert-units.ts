import { dimensions, sameDimension, toLength } from '../../core/quantity.js';
import { parseLiteral } from '../../core/literal.js';
import { showLength, type LengthUnit } from '../../core/show.js';
import { endOf, type Token } from '../../syntax/token-list.js';
import type { RawText } from '../raw-facts.js';
import type { Refactoring } from './refactoring.js';

const units: readonly (readonly [LengthUnit, string])[] = [['in', 'inches'], ['ft_in', 'feet and inches'], ['mm', 'millimetres'], ['m', 'metres']];

/** The length under the cursor, or every length of the selection, written in another unit. A length that unit cannot write exactly stays as it is. */
export function convertUnits(raw: RawText, uri: string, start: number, end: number): readonly Refactoring[] {
    const lengths = raw.tokens.filter(token => token.tokenType === raw.types.length || token.tokenType === raw.types.quantity)
        .filter(token => start === end ? token.startOffset <= start && start <= endOf(token) : start <= token.startOffset && endOf(token) <= end);
    return units.flatMap(([unit, words]): Refactoring[] => {
        const edits = lengths.flatMap(token => {
            const written = inUnit(token, unit);
            return written === undefined || written === token.image ? [] : [{ span: { uri, start: token.startOffset, end: endOf(token) }, newText: written }];
        });
        return edits.length > 0 ? [{ title: lengths.length === 1 && edits[0] ? `Write ${edits[0].newText}` : `Write these lengths in ${words}`, kind: 'rewrite', edits }] : [];
    });
}

/** The same length in a unit; nothing when it is none, or would have to be rounded. */
function inUnit(token: Token, unit: LengthUnit): string | undefined {
    const quantity = parseLiteral(token.image);
    const length = quantity && sameDimension(quantity.dimension, dimensions.length) ? toLength(quantity) : undefined;
    if (length === undefined || length < 0) return undefined;
    const written = showLength(length, unit);
    const again = parseLiteral(written);
    return !written.startsWith('≈') && again && toLength(again) === length ? written : undefined;
}
