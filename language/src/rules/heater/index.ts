import type { Rule } from '../rule.js';
import { bathingSignMissing } from './bathing-sign-missing.js';
import { benchTooNearHeater } from './bench-too-near-heater.js';
import { blockingDeeperThanWall } from './blocking-deeper-than-wall.js';
import { clearanceAboveTooSmall } from './clearance-above-too-small.js';
import { clearanceBeforeTooSmall } from './clearance-before-too-small.js';
import { clearanceBelowTooSmall } from './clearance-below-too-small.js';
import { clearanceBesideTooSmall } from './clearance-beside-too-small.js';
import { controlInWrongPlace } from './control-in-wrong-place.js';
import { controlInsideRoom } from './control-inside-room.js';
import { controlMissing } from './control-missing.js';
import { controlOutOfReach } from './control-out-of-reach.js';
import { duckboardOutsideRoom } from './duckboard-outside-room.js';
import { duckboardSlatsDoNotFit } from './duckboard-slats-do-not-fit.js';
import { duckboardUnderHeater } from './duckboard-under-heater.js';
import { feetBelowStones } from './feet-below-stones.js';
import { fittingNotOnNeighbourWall } from './fitting-not-on-neighbour-wall.js';
import { fittingOffWall } from './fitting-off-wall.js';
import { fittingOnOpening } from './fitting-on-opening.js';
import { fittingPlaceMissing } from './fitting-place-missing.js';
import { guardLeavesWall } from './guard-leaves-wall.js';
import { guardMeetsThing } from './guard-meets-thing.js';
import { guardMissing } from './guard-missing.js';
import { guardOffsetMissing } from './guard-offset-missing.js';
import { heaterAboveCeiling } from './heater-above-ceiling.js';
import { heaterCannotPassDoor } from './heater-cannot-pass-door.js';
import { heaterListingMissing } from './heater-listing-missing.js';
import { heaterMissing } from './heater-missing.js';
import { heaterNotListedWithSystem } from './heater-not-listed-with-system.js';
import { heaterNotOnNeighbourWall } from './heater-not-on-neighbour-wall.js';
import { heaterPlaceMissing } from './heater-place-missing.js';
import { heaterRunsOffWall } from './heater-runs-off-wall.js';
import { heaterScrewMeetsFacing } from './heater-screw-meets-facing.js';
import { heaterScrewMissing } from './heater-screw-missing.js';
import { heaterScrewTooShort } from './heater-screw-too-short.js';
import { heaterWayOutBlocked } from './heater-way-out-blocked.js';
import { heaterWithoutBlocking } from './heater-without-blocking.js';
import { limiterMissing } from './limiter-missing.js';
import { manualValueMissing } from './manual-value-missing.js';
import { roomTooLowForHeater } from './room-too-low-for-heater.js';
import { roomVolumeAboveRange } from './room-volume-above-range.js';
import { roomVolumeBelowRange } from './room-volume-below-range.js';
import { sensorCableTooLong } from './sensor-cable-too-long.js';
import { sensorDemandsConflict } from './sensor-demands-conflict.js';
import { sensorMissing } from './sensor-missing.js';
import { sensorNotNeeded } from './sensor-not-needed.js';
import { sensorNotOverHeater } from './sensor-not-over-heater.js';
import { sensorOnWrongWall } from './sensor-on-wrong-wall.js';
import { sensorTooHigh } from './sensor-too-high.js';
import { sensorTooLow } from './sensor-too-low.js';
import { sensorTooNearHeater } from './sensor-too-near-heater.js';
import { severalHeaters } from './several-heaters.js';
import { thermometerFarFromPractice } from './thermometer-far-from-practice.js';
import { thermometerInPlume } from './thermometer-in-plume.js';
import { thermometerMissing } from './thermometer-missing.js';
import { thingInHeater } from './thing-in-heater.js';
import { thingsInOnePlace } from './things-in-one-place.js';
import { timerInsideRoom } from './timer-inside-room.js';
import { timerMissing } from './timer-missing.js';
import { timerTooLong } from './timer-too-long.js';
import { warningSignInside } from './warning-sign-inside.js';
import { warningSignLettersTooSmall } from './warning-sign-letters-too-small.js';
import { warningSignMissing } from './warning-sign-missing.js';

/** Rules of this family, by id. */
export const heaterRules: readonly Rule[] = [
    bathingSignMissing, benchTooNearHeater, blockingDeeperThanWall, clearanceAboveTooSmall, clearanceBeforeTooSmall, clearanceBelowTooSmall,
    clearanceBesideTooSmall, controlInWrongPlace, controlInsideRoom, controlMissing, controlOutOfReach, duckboardOutsideRoom, duckboardSlatsDoNotFit, duckboardUnderHeater,
    feetBelowStones, fittingNotOnNeighbourWall, fittingOffWall, fittingOnOpening, fittingPlaceMissing, guardLeavesWall, guardMeetsThing, guardMissing,
    guardOffsetMissing, heaterAboveCeiling, heaterCannotPassDoor, heaterListingMissing, heaterMissing, heaterNotListedWithSystem, heaterNotOnNeighbourWall,
    heaterPlaceMissing, heaterRunsOffWall, heaterScrewMeetsFacing, heaterScrewMissing, heaterScrewTooShort, heaterWayOutBlocked, heaterWithoutBlocking,
    limiterMissing, manualValueMissing, roomTooLowForHeater, roomVolumeAboveRange, roomVolumeBelowRange, sensorCableTooLong, sensorDemandsConflict,
    sensorMissing, sensorNotNeeded, sensorNotOverHeater, sensorOnWrongWall, sensorTooHigh, sensorTooLow, sensorTooNearHeater, severalHeaters,
    thermometerFarFromPractice, thermometerInPlume, thermometerMissing, thingInHeater, thingsInOnePlace, timerInsideRoom, timerMissing, timerTooLong,
    warningSignInside, warningSignLettersTooSmall, warningSignMissing,
];
