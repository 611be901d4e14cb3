import { AstUtils, CstUtils, type LangiumDocument, type CstNode } from 'langium';
import * as ast from '../../../language/src/syntax/generated/ast.js';
import { expectedKinds, nameWord } from '../../../language/src/syntax/words.js';

/** The word at an offset, touched from either side, and the block it names or leads to. */
export interface NamedPlace { readonly word: CstNode; readonly block: ast.Fact }

export function namedPlaceAt(document: LangiumDocument, offset: number): NamedPlace | undefined {
    const root = document.parseResult.value.$cstNode;
    if (!root) return undefined;
    for (const leaf of [CstUtils.findLeafNodeAtOffset(root, offset), offset > 0 ? CstUtils.findLeafNodeAtOffset(root, offset - 1) : undefined]) {
        const word = leaf?.astNode;
        if (!leaf || !ast.isWord(word) || leaf.length === 0 || leaf.text !== word.ref.$refText) continue;
        const fact = AstUtils.getContainerOfType(word, ast.isFact);
        if (fact && nameWord(fact) === word) return { word: leaf, block: fact };
        const target = expectedKinds(word) ? word.ref.ref : undefined;
        if (target) return { word: leaf, block: target };
    }
    return undefined;
}
