import type { Rule } from '../rule.js';
import { benchTooNearHeater } from './bench-too-near-heater.js';
import { blockingDeeperThanWall } from './blocking-deeper-than-wall.js';
import { clearanceAboveTooSmall } from './clearance-above-too-small.js';
import { clearanceBeforeTooSmall } from './clearance-before-too-small.js';
import { clearanceBelowTooSmall } from './clearance-below-too-small.js';
import { clearanceBesideTooSmall } from './clearance-beside-too-small.js';
import { guardLeavesWall } from './guard-leaves-wall.js';
import { guardMeetsThing } from './guard-meets-thing.js';
import { guardMissing } from './guard-missing.js';
import { guardOffsetMissing } from './guard-offset-missing.js';
import { heaterAboveCeiling } from './heater-above-ceiling.js';
import { heaterListingMissing } from './heater-listing-missing.js';
import { heaterMissing } from './heater-missing.js';
import { heaterNotListedWithSystem } from './heater-not-listed-with-system.js';
import { heaterNotOnNeighbourWall } from './heater-not-on-neighbour-wall.js';
import { heaterPlaceMissing } from './heater-place-missing.js';
import { heaterRunsOffWall } from './heater-runs-off-wall.js';
import { heaterScrewMeetsFacing } from './heater-screw-meets-facing.js';
import { heaterScrewMissing } from './heater-screw-missing.js';
import { heaterScrewTooShort } from './heater-screw-too-short.js';
import { heaterWithoutBlocking } from './heater-without-blocking.js';
import { limiterMissing } from './limiter-missing.js';
import { manualValueMissing } from './manual-value-missing.js';
import { roomTooLowForHeater } from './room-too-low-for-heater.js';
import { roomVolumeAboveRange } from './room-volume-above-range.js';
import { roomVolumeBelowRange } from './room-volume-below-range.js';
import { thingInHeater } from './thing-in-heater.js';

/** Rules of this family, by id. */
export const heaterRules: readonly Rule[] = [
    benchTooNearHeater, blockingDeeperThanWall, clearanceAboveTooSmall, clearanceBeforeTooSmall, clearanceBelowTooSmall, clearanceBesideTooSmall,
    guardLeavesWall, guardMeetsThing, guardMissing, guardOffsetMissing, heaterAboveCeiling, heaterListingMissing, heaterMissing, heaterNotListedWithSystem,
    heaterNotOnNeighbourWall, heaterPlaceMissing, heaterRunsOffWall, heaterScrewMeetsFacing, heaterScrewMissing, heaterScrewTooShort, heaterWithoutBlocking,
    limiterMissing, manualValueMissing, roomTooLowForHeater, roomVolumeAboveRange, roomVolumeBelowRange, thingInHeater,
];
