import { nameBlocks } from '../assembly/naming.js';
import type { Span } from '../core/span.js';
import type { Part } from '../engines/parts/part.js';
import type { Block } from '../model/block.js';
import type { Job } from '../model/job.js';

/**
 * The block a part comes from, told by its mark: marks begin with the word of a wall or the name of a block. The longest name that fits wins, so
 * `UPPER-LEFT-RAIL-1` belongs to bench `upper_left` and not to `upper`; what belongs to no block of its own belongs to the room.
 * @returns key and name of the block
 */
export function sourceOfPart(part: Pick<Part, 'mark'>, job: Job): Span | undefined {
    let best: Block | undefined;
    let length = 0;
    for (const { stem, block } of stemsOf(job)) {
        if (stem.length <= length || !part.mark.startsWith(`${stem}-`)) continue;
        best = block;
        length = stem.length;
    }
    return (best ?? job.room)?.head;
}

const stems = new WeakMap<Job, readonly { readonly stem: string; readonly block: Block }[]>();

function stemsOf(job: Job): readonly { readonly stem: string; readonly block: Block }[] {
    let known = stems.get(job);
    if (!known) {
        const kinds = [...new Set(job.block.children.map(({ kind }) => kind))];
        known = kinds.flatMap(kind => nameBlocks(job.block.children.filter(child => child.kind === kind))).flatMap(({ name, block }) =>
            // a bench keeps the underscores of its name in its marks, an opening turns them into hyphens
            [...new Set([name.toUpperCase(), name.replaceAll(/[^A-Za-z0-9]+/g, '-').toUpperCase()])].map(stem => ({ stem, block })));
        stems.set(job, known);
    }
    return known;
}
