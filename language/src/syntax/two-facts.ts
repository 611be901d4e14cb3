import { beginsFact, isBlockKind, propertiesOf } from '../vocabulary/index.js';
import { isWordLike, type Token, type TokenTypes } from './token-list.js';

/**
 * Where a second fact begins among the tokens of one line, because the line end between them is gone; nothing where there is one.
 * What stands right behind the first word is its value, and may be a name that is spelled like a fact.
 */
export function secondFactAt(tokens: readonly Token[], context: string, types: TokenTypes): number | undefined {
    const [key] = tokens;
    if (!key || !beginsFact(context, key.image) || key.image === 'waive') return undefined;
    const property = propertiesOf(context).get(key.image)?.property;
    if (!property && isBlockKind(key.image)) return undefined;
    for (let i = 2; i + 1 < tokens.length; i++) {
        const [before, token, after] = tokens.slice(i - 1, i + 2);
        if (!token || !before || !isWordLike(token, types) || !beginsFact(context, token.image) || property?.type.choices?.includes(token.image)) continue;
        if (/^(?:[-+*/(,.]|[<>]=?|!?=|and|or|if|then|else|from)$/.test(before.image) || after?.image === '.') continue;
        return i;
    }
    return undefined;
}
