import type { Rule } from '../rule.js';
import { airChangesOutOfBand } from './air-changes-out-of-band.js';
import { condensationAtBarrier } from './condensation-at-barrier.js';
import { conductivityMissing } from './conductivity-missing.js';
import { facingTooWarm } from './facing-too-warm.js';
import { sizingMethodsDisagree } from './sizing-methods-disagree.js';
import { slatGapCloses } from './slat-gap-closes.js';
import { tongueLeavesGroove } from './tongue-leaves-groove.js';
import { warmUpTooSlow } from './warm-up-too-slow.js';

/** Rules of this family, by id. */
export const climateRules: readonly Rule[] = [
    airChangesOutOfBand, condensationAtBarrier, conductivityMissing, facingTooWarm, sizingMethodsDisagree, slatGapCloses, tongueLeavesGroove, warmUpTooSlow,
];
