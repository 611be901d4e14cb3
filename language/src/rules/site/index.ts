import type { Rule } from '../rule.js';
import { clearFloorNotStated } from './clear-floor-not-stated.js';
import { doorCannotOpenOnSite } from './door-cannot-open-on-site.js';
import { floorFallHalfStated } from './floor-fall-half-stated.js';
import { floorNotWaterproof } from './floor-not-waterproof.js';
import { freeSidesNotStated } from './free-sides-not-stated.js';
import { headroomTight } from './headroom-tight.js';
import { jointsNotAbsorbed } from './joints-not-absorbed.js';
import { obstructionInRoom } from './obstruction-in-room.js';
import { obstructionTooNear } from './obstruction-too-near.js';
import { panelDoesNotPassWayIn } from './panel-does-not-pass-way-in.js';
import { siteMissing } from './site-missing.js';
import { siteNotFullyMeasured } from './site-not-fully-measured.js';
import { siteOutOfSquare } from './site-out-of-square.js';
import { siteTooLowForAssembly } from './site-too-low-for-assembly.js';
import { siteTooSmall } from './site-too-small.js';
import { standsOnDrain } from './stands-on-drain.js';

/** Rules of this family, by id. */
export const siteRules: readonly Rule[] = [
    clearFloorNotStated,
    doorCannotOpenOnSite,
    floorFallHalfStated,
    floorNotWaterproof,
    freeSidesNotStated,
    headroomTight,
    jointsNotAbsorbed,
    obstructionInRoom,
    obstructionTooNear,
    panelDoesNotPassWayIn,
    siteMissing,
    siteNotFullyMeasured,
    siteOutOfSquare,
    siteTooLowForAssembly,
    siteTooSmall,
    standsOnDrain,
];
