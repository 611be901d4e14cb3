import * as ast from '../syntax/generated/ast.js';
import { nameOf } from '../syntax/words.js';
import { beginsFact, definitionOf, isBlockKind, isJobLike } from '../vocabulary/index.js';
import type { Names } from './names.js';
import { keyOffset } from './places.js';

/** Some facts among which names are given, and the key offsets of those that are not whole. */
export interface NamingFacts { readonly facts: readonly ast.Fact[]; readonly damaged: ReadonlySet<number> }

/**
 * The same names, where a name that nothing answers to waits when a line that could not be read may be the one that gives it: a `let` or a parameter
 * without its word or its name, a block without its name. That line has a message of its own, and one is enough.
 * @param isOpen whether what the text is made from is not in sight, and with it every block that may have been meant
 */
export const withUnfinished = (names: Names, among: readonly NamingFacts[], isOpen = false): Names => ({
    find(path) {
        const found = names.find(path);
        return found.kind === 'unknown' && ((isOpen && path.length > 1) || mayBeGiven(path, among)) ? { kind: 'waits' } : found;
    },
});

function mayBeGiven([first, ...rest]: readonly string[], among: readonly NamingFacts[]): boolean {
    return among.some(({ facts, damaged }) => facts.some(fact => {
        if (fact.key === 'let') return isUnfinished(letName(fact), fact, damaged, first);
        if (isBlockKind(fact.key) && definitionOf(fact.key).name === 'required' && !isJobLike(fact.key)) return (rest.length > 0 || fact.key === 'parameter') && isUnfinished(nameOf(fact), fact, damaged, first);
        // The word before it is missing: `aisle = 36"`, `w { takes length }`.
        return fact.key === first && !beginsFact(ast.isFact(fact.$container) ? fact.$container.key : 'file', fact.key);
    }));
}

const isUnfinished = (name: string | undefined, fact: ast.Fact, damaged: ReadonlySet<number>, wanted: string | undefined): boolean =>
    name === undefined || name === '' || (name === wanted && damaged.has(keyOffset(fact)));

function letName(fact: ast.Fact): string | undefined {
    const name = fact.phrases[0]?.terms[0];
    return ast.isWord(name) ? name.ref.$refText : undefined;
}
