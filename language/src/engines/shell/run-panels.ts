import { plus, ticks, type Length } from '../../core/length.js';
import type { Interval } from '../../core/geometry.js';
import type { Division, RunInput, RunPiece } from './division.js';
import { panelWeight, type PanelWeight } from './panel-weight.js';
import type { RunSide, ShellLayer } from './shell-input.js';
import type { ShellJoint, ShellPanel } from './shell-result.js';

/** What the panels of one wall or ceiling have in common. */
export interface PanelMaking {
    /** `FRONT` for `FRONT-1`. */
    readonly word: string;
    readonly height: Length;
    readonly thickness: Length;
    readonly layers: readonly ShellLayer[];
    readonly engagement: Length;
    readonly chainStartsAt: RunSide;
    /** Where the run starts in the frame the result is given in. */
    readonly origin: Length;
    /** Sections by name; a run without openings needs none. */
    readonly sections: ReadonlyMap<string, { readonly kind: 'door' | 'window'; readonly massKg?: number }>;
}

/** Panels left to right with their marks, and the joints between them, of a run that closes. */
export function panelsOfRun(input: RunInput, division: Division & { readonly closes: true }, making: PanelMaking): { readonly panels: readonly ShellPanel[]; readonly joints: readonly ShellJoint[] } {
    const place = (at: Length): Length => plus(making.origin, at);
    const count = division.pieces.length;
    const panels = division.pieces.map((piece, index): ShellPanel => {
        const isFirstOfChain = making.chainStartsAt === 'left' ? index === 0 : index === count - 1;
        const tongueEdges: readonly RunSide[] = isFirstOfChain ? [] : [making.chainStartsAt];
        const overall = ticks(piece.width + tongueEdges.length * making.engagement);
        const strip = {
            ...(index === 0 && input.left.covered > 0 && { left: input.left.covered }),
            ...(index === count - 1 && input.right.covered > 0 && { right: input.right.covered }),
        };
        return {
            mark: `${making.word}-${index + 1}`,
            ...kindOf(piece, making),
            cover: piece.width, overall, height: making.height, thickness: making.thickness,
            at: shifted(piece.at, making.origin), hookEdge: making.chainStartsAt, tongueEdges,
            ...((strip.left !== undefined || strip.right !== undefined) && { cornerStrip: strip }),
            weight: weightOf(piece, making, overall),
        };
    });
    const joints = division.joints.map((joint, index): ShellJoint => ({
        between: [panels[index]?.mark ?? '', panels[index + 1]?.mark ?? ''], at: place(joint),
        broken: division.broken.filter(broken => broken.joint === joint)
            .map(broken => ({ joint: place(broken.joint), rule: { ...broken.rule, zone: shifted(broken.rule.zone, making.origin) } })),
    }));
    return { panels, joints };
}

const shifted = ({ from, to }: Interval, by: Length): Interval => ({ from: plus(from, by), to: plus(to, by) });

function kindOf(piece: RunPiece, making: PanelMaking): Pick<ShellPanel, 'kind' | 'opening'> {
    if (piece.kind !== 'section') return { kind: piece.kind };
    const name = piece.section ?? '';
    return { kind: making.sections.get(name)?.kind === 'window' ? 'window_section' : 'door_section', opening: name };
}

/** A section weighs what its catalogue entry says; its layers do not tell. */
function weightOf(piece: RunPiece, making: PanelMaking, overall: Length): PanelWeight {
    if (piece.kind !== 'section') return panelWeight(making.layers, piece.width, overall, making.height);
    const kg = making.sections.get(piece.section ?? '')?.massKg;
    return kg === undefined ? { isKnown: false, missing: [piece.section ?? ''] } : { isKnown: true, kg };
}
