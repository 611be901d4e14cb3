import { inWords, type Finding } from '../../core/finding.js';
import { extent, intervalsOverlap, neighbours, type Wall } from '../../core/geometry.js';
import { minus } from '../../core/length.js';
import type { WallOpening } from '../../engines/benches/bench-input.js';
import type { Block } from '../../model/block.js';
import type { RuleInput } from '../rule.js';
import { benchFindings } from './bench-findings.js';

/** Benches before the openings of one kind. `cure` is what else helps besides moving the opening clear. */
export function acrossOpening(input: RuleInput, kind: WallOpening['kind'], { text, cure }: { readonly text: string; readonly cure: string }): Generator<Finding> {
    const { results: { benches }, show } = input;
    return benchFindings(input, 'across-opening', ({ problem: { opening: name, openingKind, wall, u, v }, block, name: bench }) => {
        const opening = benches?.input.openings.find(candidate => candidate.name === name && candidate.wall === wall && candidate.kind === kind);
        if (openingKind !== kind || !opening) return undefined;
        // The bench covers the opening from one side when it reaches past that edge of it.
        const runs = benches?.result.benches.find(layout => layout.name === bench)?.runs ?? [];
        const isAlong = runs.some(run => run.wall === wall && intervalsOverlap(run.u, opening.u));
        const aside = isAlong ? undefined : clearOf(opening, u, wall);
        const size = `${show(extent(u))} of the width and ${show(extent(v))} of the height`;
        return {
            at: block.head,
            message: `Bench ${bench} covers ${size} of ${kind} ${name}. ` +
                `${aside ? `Move the ${kind} ${show(aside.by)} toward the ${aside.toward} wall, or ` : ''}${aside ? cure : capital(cure)}.`,
            citation: { kind: 'geometry', text }, measured: inWords(size), required: inWords('nothing covered'), subject: bench,
            related: relatedOf(input, kind, name),
        };
    });
}

/** How far the opening has to move from the side it is covered on. */
function clearOf(opening: WallOpening, covered: WallOpening['u'], wall: Wall): { readonly by: ReturnType<typeof extent>; readonly toward: Wall } | undefined {
    if (covered.from === opening.u.from && covered.to < opening.u.to) return { by: minus(covered.to, opening.u.from), toward: neighbours[wall].right };
    if (covered.to === opening.u.to && covered.from > opening.u.from) return { by: minus(opening.u.to, covered.from), toward: neighbours[wall].left };
    return undefined;
}

function relatedOf({ results: { doors, windows, air } }: RuleInput, kind: WallOpening['kind'], name: string): NonNullable<Finding['related']> {
    const all: readonly { readonly name: string; readonly block: Block }[] = kind === 'door' ? doors : kind === 'window' ? windows : air?.vents ?? [];
    return all.filter(opening => opening.name === name).map(({ block }) => ({ at: block.head, message: `The ${kind} stands here.` }));
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
