import type { Box, Interval, Wall } from '../../core/geometry.js';
import type { Length } from '../../core/length.js';
import type { WallOpening } from './bench-input.js';

/** What is wrong with a bench, with the figures a message needs. `bench` is the bench the designer would change. */
export type BenchProblem = { readonly bench: string } & BenchProblemDetail;

export type BenchProblemDetail =
    /** A figure that must be above zero is not; the bench is left out. */
    | { readonly kind: 'figure-not-above-zero'; readonly what: string; readonly value: Length }
    /** Cross-bearers closer than they are wide would overlap; the bench is left out. */
    | { readonly kind: 'bearers-closer-than-wide'; readonly spacing: Length; readonly bearerWidth: Length }
    /** No bench of the job has the name after `in_front_of`; `known` are those that have one. The bench is placed as if nothing were stated. */
    | { readonly kind: 'in-front-of-unknown'; readonly named: string; readonly known: readonly string[] }
    /** The chain of `in_front_of` comes back to its start; the first name is not repeated at the end. */
    | { readonly kind: 'in-front-of-cycle'; readonly chain: readonly string[] }
    | { readonly kind: 'in-front-of-not-higher'; readonly behind: string; readonly top: Length; readonly topBehind: Length }
    | { readonly kind: 'in-front-of-other-wall'; readonly behind: string; readonly walls: readonly Wall[]; readonly wallsBehind: readonly Wall[] }
    | { readonly kind: 'wall-named-twice'; readonly wall: Wall }
    /** The two walls of an L do not meet in a corner. */
    | { readonly kind: 'walls-not-adjacent'; readonly walls: readonly Wall[] }
    | { readonly kind: 'too-many-walls'; readonly walls: readonly Wall[] }
    /** `from` names a wall that is no neighbour of the first wall. */
    | { readonly kind: 'place-not-neighbour'; readonly wall: Wall; readonly from: Wall; readonly neighbours: readonly Wall[] }
    /** A length shorter than the wall without `from`: `free` is what is left over. */
    | { readonly kind: 'place-missing'; readonly wall: Wall; readonly length: Length; readonly free: Length }
    /** The first run of an L stops short of the corner where the next begins. */
    | { readonly kind: 'runs-do-not-meet'; readonly first: Wall; readonly second: Wall }
    /** Sticks out of the room on one side by `by`. */
    | { readonly kind: 'outside-room'; readonly side: Wall | 'floor' | 'ceiling'; readonly by: Length; readonly wall: Wall }
    /** Too short for a cross-bearer and a ledger at each end. */
    | { readonly kind: 'run-too-short'; readonly wall: Wall; readonly length: Length; readonly least: Length }
    /** Too little depth for a front and a rear leg or rail. */
    | { readonly kind: 'too-shallow'; readonly depth: Length; readonly least: Length }
    /** The top is lower than slat, cross-bearer and rail are high. */
    | { readonly kind: 'top-below-build-up'; readonly top: Length; readonly buildUp: Length }
    /** No number of slats gives an equal gap within the limits; the nearest depths that do, where there are any. */
    | { readonly kind: 'slats-do-not-fit'; readonly depth: Length; readonly smaller: Length | undefined; readonly larger: Length | undefined }
    /** A back ledger or back rest is asked for where the bench stands off the wall by `off`. */
    | { readonly kind: 'no-wall-behind'; readonly what: 'back ledger' | 'back rest'; readonly wall: Wall; readonly off: Length }
    /** The gap to the lining is as wide as the ledger is thick, so the bench misses it. */
    | { readonly kind: 'ledger-missed'; readonly wallGap: Length; readonly ledgerThickness: Length }
    /** Asked for, but the bench build names no stock for it. */
    | { readonly kind: 'no-stock-for'; readonly what: 'fascia' | 'back rest' }
    /** The notch for the tier in front leaves nothing of the legs, so the span stands without them. */
    | { readonly kind: 'span-without-leg'; readonly wall: Wall; readonly span: Length; readonly limit: Length; readonly notchFor: string; readonly notch: Length; readonly legWidth: Length }
    /** A leg would have to pass through another bench. */
    | { readonly kind: 'leg-through-bench'; readonly mark: string; readonly other: string }
    | { readonly kind: 'leg-on-obstacle'; readonly mark: string; readonly obstacle: string; readonly x: Interval; readonly y: Interval }
    /** Two benches, or two runs of one bench, want the same space; `shared` is in the room frame. */
    | { readonly kind: 'tiers-overlap'; readonly other: string; readonly shared: Box }
    /** `rise` is from the floor when `from` is absent. */
    | { readonly kind: 'climb-too-high'; readonly from: string | undefined; readonly rise: Length; readonly limit: Length }
    /** `u` and `v` are what the bench covers of the opening, in the frame of the opening's wall. */
    | { readonly kind: 'across-opening'; readonly opening: string; readonly openingKind: WallOpening['kind']; readonly wall: Wall; readonly u: Interval; readonly v: Interval }
    | { readonly kind: 'in-keep-clear'; readonly zone: string; readonly shared: Box };

/** Every kind, for tests that hold rules and problems together. */
export type BenchProblemKind = BenchProblemDetail['kind'];
