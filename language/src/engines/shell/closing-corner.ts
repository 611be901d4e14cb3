import { neighbours, walls, type Wall } from '../../core/geometry.js';
import type { Length } from '../../core/length.js';
import type { CornerName, RunSide, ShellInput } from './shell-input.js';
import type { ShellPanel, WallShell } from './shell-result.js';
import { cornerAt } from './wall-run.js';

/**
 * The rule: the chain of panels goes round the room and ends at a corner. The closing panel is the last of its wall there; to let it in, the
 * wall that begins at that corner swings outward by the engagement on an unfastened plate. That wall cannot stand against the building.
 * Preferred: both sides of the corner free, so that someone can reach it; then a closing panel that is a whole module, then one made to measure,
 * then a window and last a door section; then a front corner, then the corner on the side where the chain begins.
 */
export interface ClosingCorner {
    readonly corner: CornerName;
    /** Mark of the closing panel, and its wall. */
    readonly panel: string;
    readonly wall: Wall;
    /** The wall that swings, and by how much. Its base plate stays unfastened at the corner until the panel is in. */
    readonly swings: Wall;
    readonly by: Length;
    readonly isNamedByDesigner: boolean;
    /** Every corner looked at. */
    readonly considered: readonly ConsideredCorner[];
}

export interface ConsideredCorner {
    readonly corner: CornerName;
    readonly wall: Wall;
    readonly swings: Wall;
    readonly panel?: string;
    readonly can: 'close' | 'not-swing-against-the-building' | 'not-close-a-wall-without-panels';
    /** Both sides of the corner stand free. */
    readonly isInReach: boolean;
}

export type NoClosingCorner =
    /** Every wall that could swing stands against the building. */
    | { readonly kind: 'every-corner-stands-against-the-building'; readonly considered: readonly ConsideredCorner[] }
    | { readonly kind: 'named-corner-stands-against-the-building'; readonly corner: CornerName; readonly swings: Wall; readonly considered: readonly ConsideredCorner[] };

/** `undefined` on both when walls that do not close leave nothing to choose: their own problems say so. */
export function closingCorner(input: ShellInput, shells: Readonly<Record<Wall, WallShell>>): { readonly corner?: ClosingCorner; readonly none?: NoClosingCorner } {
    const startsAt = input.system.chainStartsAt ?? 'left';
    const endsAt: RunSide = startsAt === 'left' ? 'right' : 'left';
    const options = walls.map((wall): ConsideredCorner & { readonly last?: ShellPanel } => {
        const swings = neighbours[wall][endsAt];
        const last = endsAt === 'right' ? shells[wall].panels.at(-1) : shells[wall].panels[0];
        const canSwing = input.freeSides.includes(swings) || input.system.engagement <= 0;
        return {
            corner: cornerAt(wall, endsAt), wall, swings, ...(last && { panel: last.mark, last }),
            can: !canSwing ? 'not-swing-against-the-building' : last ? 'close' : 'not-close-a-wall-without-panels',
            isInReach: input.freeSides.includes(wall) && input.freeSides.includes(swings),
        };
    });
    const considered = options.map(({ corner, wall, swings, panel, can, isInReach }): ConsideredCorner => ({ corner, wall, swings, ...(panel !== undefined && { panel }), can, isInReach }));
    const named = options.find(option => option.corner === input.closingCorner);
    if (named?.can === 'not-swing-against-the-building') {
        return { none: { kind: 'named-corner-stands-against-the-building', corner: named.corner, swings: named.swings, considered } };
    }
    if (options.every(option => option.can === 'not-swing-against-the-building')) return { none: { kind: 'every-corner-stands-against-the-building', considered } };
    const [best] = (named ? [named] : options).filter(option => option.can === 'close').sort((a, b) =>
        Number(b.isInReach) - Number(a.isInReach) || kindRank(a.last) - kindRank(b.last) || cornerRank(a.corner, startsAt) - cornerRank(b.corner, startsAt));
    if (!best?.panel) return {};
    return {
        corner: {
            corner: best.corner, panel: best.panel, wall: best.wall, swings: best.swings, by: input.system.engagement,
            isNamedByDesigner: named !== undefined, considered,
        },
    };
}

const kinds: readonly ShellPanel['kind'][] = ['module', 'made_to_measure', 'window_section', 'door_section'];
const kindRank = (panel: ShellPanel | undefined): number => panel ? kinds.indexOf(panel.kind) : kinds.length;
/** Front corners first, then the side the chain begins at in plan, so that a mirrored room with a mirrored chain closes at the mirrored corner. */
function cornerRank(corner: CornerName, startsAt: RunSide): number {
    return (corner.startsWith('front') ? 0 : 2) + (corner.endsWith(startsAt) ? 0 : 1);
}
