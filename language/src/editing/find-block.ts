import type { Analysis, JobAnalysis } from '../analyze.js';
import { nameAmong } from '../assembly/naming.js';
import type { Block } from '../model/block.js';

export interface FoundBlock {
    readonly block: Block;
    /** The job it belongs to; none for what stands in a catalogue. */
    readonly job: JobAnalysis | undefined;
    readonly parent: Block | undefined;
}

/** Every block of a file, in the order of the model: jobs, then catalogues. */
export function* blocksOf(analysis: Analysis): Generator<FoundBlock> {
    function* within(block: Block, job: JobAnalysis | undefined, parent: Block | undefined): Generator<FoundBlock> {
        yield { block, job, parent };
        for (const child of block.children) yield* within(child, job, block);
    }
    for (const job of analysis.jobs) yield* within(job.job.block, job, undefined);
    for (const catalogue of analysis.file.catalogues) yield* within(catalogue, undefined, undefined);
}

export function blockStartingAt(analysis: Analysis, start: number): FoundBlock | undefined {
    for (const found of blocksOf(analysis)) if (found.block.span.start === start) return found;
    return undefined;
}

/** The path under which the facts tree keeps what was worked out for a block: its name, else its kind, numbered from the second on. */
export function factsPrefix(block: Block, parent: Block | undefined): string | undefined {
    return block.kind === 'job' ? undefined : nameAmong(block, parent?.children ?? [block]);
}

/** Paths, below the block's own, of what matters most about a block of some kind; a hover and a hint begin with them. */
export const headlines: Readonly<Record<string, readonly string[]>> = {
    room: ['inside.volume', 'panels', 'inside.height', 'panel_mass'],
    bench: ['head_clearance', 'length', 'ledger.top', 'seats'],
    heater: ['current', 'device', 'conductor'],
    site: ['spare_width', 'spare_depth'],
};
