import type { Rule } from '../rule.js';
import { airShortCircuit } from './air-short-circuit.js';
import { cleanSourceUnknown } from './clean-source-unknown.js';
import { exhaustMissing } from './exhaust-missing.js';
import { exhaustNotInPlace } from './exhaust-not-in-place.js';
import { exhaustPlaceDisputed } from './exhaust-place-disputed.js';
import { exhaustSmallerThanIntake } from './exhaust-smaller-than-intake.js';
import { grilleLeavesTooLittle } from './grille-leaves-too-little.js';
import { intakeAboveHeater } from './intake-above-heater.js';
import { intakeFarFromHeater } from './intake-far-from-heater.js';
import { intakeMissing } from './intake-missing.js';
import { noAirUnderDoor } from './no-air-under-door.js';
import { openingTooSmall } from './opening-too-small.js';
import { ventAboveCeiling } from './vent-above-ceiling.js';
import { ventBehindOtherWall } from './vent-behind-other-wall.js';
import { ventBelowFloor } from './vent-below-floor.js';
import { ventHeightMissing } from './vent-height-missing.js';
import { ventInHeaterBlocking } from './vent-in-heater-blocking.js';
import { ventLetsNothingThrough } from './vent-lets-nothing-through.js';
import { ventMeetsOpening } from './vent-meets-opening.js';
import { ventNotOnNeighbour } from './vent-not-on-neighbour.js';
import { ventOnClosedSide } from './vent-on-closed-side.js';
import { ventPlaceMissing } from './vent-place-missing.js';
import { ventPlacedTwice } from './vent-placed-twice.js';
import { ventRoleMissing } from './vent-role-missing.js';
import { ventRunsOffWall } from './vent-runs-off-wall.js';
import { ventsOverlap } from './vents-overlap.js';

/** Rules of this family, by id. */
export const airRules: readonly Rule[] = [
    airShortCircuit, cleanSourceUnknown, exhaustMissing, exhaustNotInPlace, exhaustPlaceDisputed, exhaustSmallerThanIntake,
    grilleLeavesTooLittle, intakeAboveHeater, intakeFarFromHeater, intakeMissing, noAirUnderDoor, openingTooSmall, ventAboveCeiling,
    ventBehindOtherWall, ventBelowFloor, ventHeightMissing, ventInHeaterBlocking, ventLetsNothingThrough, ventMeetsOpening,
    ventNotOnNeighbour, ventOnClosedSide, ventPlaceMissing, ventPlacedTwice, ventRoleMissing, ventRunsOffWall, ventsOverlap,
];
