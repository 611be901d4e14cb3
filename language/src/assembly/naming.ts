import type { Block } from '../model/block.js';
import { definitionOf, type BlockKind } from '../vocabulary/index.js';

/** A block with the name engines and facts know it by. */
export interface NamedBlock<K extends BlockKind> {
    readonly name: string;
    readonly block: Block<K>;
}

/** Names every block: its own name, else its kind, numbered from the second on. A block that must have a name and has none is left out: its header could not be read. */
export function nameBlocks<K extends BlockKind>(blocks: readonly Block<K>[]): readonly NamedBlock<K>[] {
    let nameless = 0;
    return blocks.flatMap(block => {
        if (block.name) return [{ name: block.name.value, block }];
        if (definitionOf(block.kind).name === 'required') return [];
        nameless++;
        return [{ name: nameless === 1 ? block.kind : `${block.kind}_${nameless}`, block }];
    });
}

/** The name of one block among all blocks of the one it stands in: the path under which the facts tree keeps what was worked out for it. */
export function nameAmong(block: Block, siblings: readonly Block[]): string {
    if (block.name) return block.name.value;
    return nameBlocks(siblings.filter(({ kind }) => kind === block.kind)).find(named => named.block === block)?.name ?? block.kind;
}
