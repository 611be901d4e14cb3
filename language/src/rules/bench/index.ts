import type { Rule } from '../rule.js';
import { accessibleBenchDepthWrong } from './accessible-bench-depth-wrong.js';
import { accessibleBenchFloorNotClear } from './accessible-bench-floor-not-clear.js';
import { accessibleBenchMissing } from './accessible-bench-missing.js';
import { accessibleBenchNotJudged } from './accessible-bench-not-judged.js';
import { accessibleBenchTooShort } from './accessible-bench-too-short.js';
import { accessibleBenchWithoutBack } from './accessible-bench-without-back.js';
import { accessibleSeatHeightWrong } from './accessible-seat-height-wrong.js';
import { bearersCloserThanWide } from './bearers-closer-than-wide.js';
import { benchAcrossDoor } from './bench-across-door.js';
import { benchAcrossVent } from './bench-across-vent.js';
import { benchAcrossWindow } from './bench-across-window.js';
import { benchCloseBeforeDoor } from './bench-close-before-door.js';
import { benchFigureNotAboveZero } from './bench-figure-not-above-zero.js';
import { benchMissesLedger } from './bench-misses-ledger.js';
import { benchMissing } from './bench-missing.js';
import { benchOutsideRoom } from './bench-outside-room.js';
import { benchOverloaded } from './bench-overloaded.js';
import { benchPlaceMissing } from './bench-place-missing.js';
import { benchPlaceNotANeighbour } from './bench-place-not-a-neighbour.js';
import { benchRunTooShort } from './bench-run-too-short.js';
import { benchRunsDoNotMeet } from './bench-runs-do-not-meet.js';
import { benchStockNotNamed } from './bench-stock-not-named.js';
import { benchStrengthNotChecked } from './bench-strength-not-checked.js';
import { benchTooShallowToFrame } from './bench-too-shallow-to-frame.js';
import { benchTooShortToSit } from './bench-too-short-to-sit.js';
import { benchTopBelowBuildUp } from './bench-top-below-build-up.js';
import { benchWallsCannotJoin } from './bench-walls-cannot-join.js';
import { climbTooHigh } from './climb-too-high.js';
import { elbowsMeet } from './elbows-meet.js';
import { feetHang } from './feet-hang.js';
import { footRoomTooSmall } from './foot-room-too-small.js';
import { headClearanceGenerous } from './head-clearance-generous.js';
import { headClearanceTooLow } from './head-clearance-too-low.js';
import { kneesMeetThing } from './knees-meet-thing.js';
import { ledgerScrewTooLong } from './ledger-screw-too-long.js';
import { ledgerScrewTooShort } from './ledger-screw-too-short.js';
import { legThroughBench } from './leg-through-bench.js';
import { lightLowOverBench } from './light-low-over-bench.js';
import { noTurningSpace } from './no-turning-space.js';
import { noWallBehindBench } from './no-wall-behind-bench.js';
import { riseTooLow } from './rise-too-low.js';
import { seatDeeperThanThighs } from './seat-deeper-than-thighs.js';
import { seatTooShallow } from './seat-too-shallow.js';
import { sitterMeetsCeiling } from './sitter-meets-ceiling.js';
import { slatScrewWrongLength } from './slat-screw-wrong-length.js';
import { slatsDoNotFit } from './slats-do-not-fit.js';
import { spanWithoutLeg } from './span-without-leg.js';
import { tierBehindNotHigher } from './tier-behind-not-higher.js';
import { tierBehindOnAnotherWall } from './tier-behind-on-another-wall.js';
import { tiersInACircle } from './tiers-in-a-circle.js';
import { tiersOverlap } from './tiers-overlap.js';
import { turningSpaceUnderDoor } from './turning-space-under-door.js';

/** Rules of this family, by id. */
export const benchRules: readonly Rule[] = [
    accessibleBenchDepthWrong,
    accessibleBenchFloorNotClear,
    accessibleBenchMissing,
    accessibleBenchNotJudged,
    accessibleBenchTooShort,
    accessibleBenchWithoutBack,
    accessibleSeatHeightWrong,
    bearersCloserThanWide,
    benchAcrossDoor,
    benchAcrossVent,
    benchAcrossWindow,
    benchCloseBeforeDoor,
    benchFigureNotAboveZero,
    benchMissesLedger,
    benchMissing,
    benchOutsideRoom,
    benchOverloaded,
    benchPlaceMissing,
    benchPlaceNotANeighbour,
    benchRunTooShort,
    benchRunsDoNotMeet,
    benchStockNotNamed,
    benchStrengthNotChecked,
    benchTooShallowToFrame,
    benchTooShortToSit,
    benchTopBelowBuildUp,
    benchWallsCannotJoin,
    climbTooHigh,
    elbowsMeet,
    feetHang,
    footRoomTooSmall,
    headClearanceGenerous,
    headClearanceTooLow,
    kneesMeetThing,
    ledgerScrewTooLong,
    ledgerScrewTooShort,
    legThroughBench,
    lightLowOverBench,
    noTurningSpace,
    noWallBehindBench,
    riseTooLow,
    seatDeeperThanThighs,
    seatTooShallow,
    sitterMeetsCeiling,
    slatScrewWrongLength,
    slatsDoNotFit,
    spanWithoutLeg,
    tierBehindNotHigher,
    tierBehindOnAnotherWall,
    tiersInACircle,
    tiersOverlap,
    turningSpaceUnderDoor,
];
